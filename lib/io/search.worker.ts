/// <reference lib="webworker" />
import { expose } from 'comlink';
import type { Candidates } from '../insight/options/candidates.ts';
import { listCandidates } from '../insight/options/list-candidates.ts';
import type { SpaceSlice } from '../insight/options/option-choices.ts';
import { type OptionContext, optionContext } from '../insight/options/option-context.ts';
import type { Candidate, OptionOutcome } from '../insight/options/option-types.ts';
import { workOutOption } from '../insight/options/work-out-option.ts';
import { todayWeek } from '../model/evaluate-scenario.ts';
import { plantMemory } from '../risk/plant-memory.ts';
import type { SearchRequest } from './search-desk.ts';

const memory = plantMemory();

let ground: { readonly serial: number; readonly context: OptionContext } | null = null;

/** What the options of a search are measured against, worked out once in each thread; null when today's shop cannot run. */
function contextOf({ serial, plan, baseId }: SearchRequest): OptionContext | null {
  if (ground?.serial === serial) return ground.context;
  const week = todayWeek(plan, memory.simulate);
  if (!week.ok) return null;
  ground = { serial, context: optionContext(plan, baseId, week.value) };
  return ground.context;
}

/** All that may do in a slice of the space; null when today's shop, against which everything is judged, cannot run. */
function list(request: SearchRequest, { space, firstPlace }: SpaceSlice): Candidates | null {
  const context = contextOf(request);
  return context && listCandidates(context, space, request.limits, memory.simulate, firstPlace);
}

/** Works some candidates out; those of one family one after the other, so that they share their weeks. */
function workOut(request: SearchRequest, members: readonly Candidate[]): OptionOutcome[] {
  const context = contextOf(request);
  if (!context) throw new RangeError('a search needs a shop of today that can run');
  return members.map((member) => workOutOption(context, request.space, request.limits, member, memory.simulate));
}

/** What the page may ask of a thread that looks for options. */
const api = { list, workOut };

export type SearchApi = typeof api;

expose(api);
