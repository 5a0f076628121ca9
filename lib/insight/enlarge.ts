import type {
  ChamberSpec,
  ChamberUnitSpec,
  CrewSpec,
  PumpSpec,
  ShiftSpec,
  ShopSpec,
  TaskSpec,
  TrapSpec,
} from '../plant/types.ts';
import type { Resource } from './insight-types.ts';

function largerTrap(trap: TrapSpec, factor: number): TrapSpec {
  return {
    ...trap,
    area: trap.area * factor,
    capacity: trap.capacity * factor,
    vapourConductance: trap.vapourConductance * factor,
    curve: trap.curve.map((point) => ({ ...point, load: point.load * factor })),
  };
}

/**
 * A chamber with everything of its own larger: shelves, room, heat, trap, and with them its leak and the gas its walls give
 * off, for a quarter more chamber asks a quarter more of the pump. Hose and pump stay as they are.
 */
function largerChamber(chamber: ChamberSpec, factor: number): ChamberSpec {
  return {
    ...chamber,
    shelfArea: chamber.shelfArea * factor,
    volume: chamber.volume * factor,
    leak: chamber.leak * factor,
    outgassing: chamber.outgassing * factor,
    heaterPower: chamber.heaterPower * factor,
    trap: largerTrap(chamber.trap, factor),
  };
}

/** Tasks as long as `factor` batches of the present size would take, so that a larger chamber makes no task cheaper. */
function longerTasks({ tasks, shifts }: CrewSpec, factor: number): CrewSpec {
  const longer = (task: TaskSpec): TaskSpec => ({ ...task, perBatch: task.perBatch * factor });
  return { shifts, tasks: { load: longer(tasks.load), unload: longer(tasks.unload), clean: longer(tasks.clean) } };
}

function largerPump(pump: PumpSpec, factor: number): PumpSpec {
  return {
    ...pump,
    speed: pump.speed * factor,
    vapourTolerance: pump.vapourTolerance * factor,
    table: pump.table.map((point) => ({ ...point, speed: point.speed * factor })),
  };
}

function eachUnit(spec: ShopSpec, change: (unit: ChamberUnitSpec) => ChamberUnitSpec): ShopSpec {
  // Units that were one and the same stay so: what is computed per chamber type is then computed once.
  const done = new Map<ChamberUnitSpec['chamber'], ChamberUnitSpec['chamber']>();
  const changed = (unit: ChamberUnitSpec): ChamberUnitSpec => {
    const next = change(unit);
    const chamber = done.get(unit.chamber) ?? next.chamber;
    done.set(unit.chamber, chamber);
    return { ...next, chamber };
  };
  return { ...spec, groups: spec.groups.map((group) => ({ ...group, chambers: group.chambers.map(changed) })) };
}

const DAY = 86_400;

/** A shift longer by `factor`, within its day; when the day has no room left, more people instead. */
function largerShift(shift: ShiftSpec, factor: number): ShiftSpec {
  const length = (shift.end - shift.start) * factor;
  if (length > DAY) return { ...shift, people: Math.ceil(shift.people * factor) };
  const end = Math.min(DAY, shift.start + length);
  return { ...shift, start: end - length, end };
}

/**
 * The same shop with one resource larger by `factor`; null when the week simulation knows no limit of that resource.
 * Chambers grow as machines (a quarter of a chamber cannot be bought) and take as many hands as more chambers would; hoses
 * grow by conductance, people by longer shifts. No task gets cheaper.
 */
export function enlarge(spec: ShopSpec, resource: Resource, factor: number): ShopSpec | null {
  switch (resource) {
    case 'chambers':
      return {
        ...eachUnit(spec, (unit) => ({ ...unit, chamber: largerChamber(unit.chamber, factor) })),
        crew: longerTasks(spec.crew, factor),
      };
    case 'pump':
      return {
        ...spec,
        groups: spec.groups.map((group) => ({ ...group, pump: largerPump(group.pump, factor) })),
        roughingPump: spec.roughingPump && largerPump(spec.roughingPump, factor),
      };
    case 'hose':
      return eachUnit(spec, (unit) => ({ ...unit, hose: { ...unit.hose, length: unit.hose.length / factor } }));
    case 'trap':
      return eachUnit(spec, (unit) => ({
        ...unit,
        chamber: { ...unit.chamber, trap: largerTrap(unit.chamber.trap, factor) },
      }));
    case 'heater':
      return eachUnit(spec, (unit) => ({
        ...unit,
        chamber: { ...unit.chamber, heaterPower: unit.chamber.heaterPower * factor },
      }));
    case 'freezer':
      return spec.freezer && { ...spec, freezer: { ...spec.freezer, capacity: spec.freezer.capacity * factor } };
    case 'crew':
      return { ...spec, crew: { ...spec.crew, shifts: spec.crew.shifts.map((shift) => largerShift(shift, factor)) } };
    case 'demand':
      if (spec.mix.every((entry) => entry.weeklyCap === null)) return null;
      return {
        ...spec,
        mix: spec.mix.map((entry) => ({ ...entry, weeklyCap: entry.weeklyCap && entry.weeklyCap * factor })),
      };
    case 'power':
      return null;
  }
}
