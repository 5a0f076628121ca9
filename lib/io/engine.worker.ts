/// <reference lib="webworker" />
import { expose } from 'comlink';
import { findBottleneck } from '../insight/find-bottleneck.ts';
import { kneeCurve } from '../insight/knee-curve.ts';
import { evaluateScenario } from '../model/evaluate-scenario.ts';

/** What the page may ask of the engine; it runs in a thread of its own so that typing never waits. */
const api = { evaluateScenario, findBottleneck, kneeCurve };

export type EngineApi = typeof api;

expose(api);
