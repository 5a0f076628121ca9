/// <reference lib="webworker" />
import { expose } from 'comlink';
import { type DrawOutcome, type DrawRequest, evaluateDraws } from '../risk/evaluate-draws.ts';
import { plantMemory } from '../risk/plant-memory.ts';

// Kept from one chunk to the next, so that draws which differ in money alone go on sharing one simulation.
const memory = plantMemory();

/** What the page may ask of a thread that works draws out. */
const api = {
  evaluateDraws: (request: DrawRequest): DrawOutcome[][] => evaluateDraws(request, () => {}, memory),
};

export type RiskApi = typeof api;

expose(api);
