/// <reference lib="webworker" />
import { expose } from 'comlink';
import { kneeMapOutput } from '../insight/knee-map.ts';
import { type DrawOutcome, type DrawRequest, evaluateDraws } from '../risk/evaluate-draws.ts';
import { plantMemory } from '../risk/plant-memory.ts';
import { pumpSide } from '../risk/pump-side.ts';

// Kept from one part to the next, so that draws which differ in money alone go on sharing one simulation.
const memory = plantMemory();

/** What the page may ask of a thread that does long work, part by part. */
const api = {
  evaluateDraws: (request: DrawRequest): DrawOutcome[][] => evaluateDraws(request, () => {}, memory),
  kneeMapOutput,
  pumpSide,
};

export type StudyApi = typeof api;

expose(api);
