import type { CapitalLine } from '../../cost/capital.ts';
import type { PurchaseItem } from '../equipment-items.ts';
import { purchaseItems, stageCapital } from '../scenario-capital.ts';
import { type Stage, scenarioStages } from '../scenario-stages.ts';
import { pathOf } from './plan-paths.ts';
import { addUp, bookedTerm, inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import type { Term, WorkContext, Working } from './working.ts';

/** Path of the thing that a purchase is of; null for works. */
function thingPath({ plan }: WorkContext, item: PurchaseItem): string | null {
  const [kind = '', ...id] = item.key.split(' ');
  if (kind === 'freezer') return 'freezer';
  const list = ({ chamber: 'chambers', pump: 'pumps', hose: 'hoses' } as const)[kind];
  return list ? pathOf(plan, list, id.join(' ')) : null;
}

const WORK_PRICES: Readonly<Record<string, string>> = {
  manifold: 'site.manifoldPerChamber',
  electrical: 'site.electricalPerChamber',
};

function countTerm(context: WorkContext, stage: Stage, item: PurchaseItem): Term {
  const path = pathOf(context.plan, 'scenarios', stage.scenario.id);
  return bookedTerm(
    { label: `How many: ${item.name}`, symbol: 'n', value: item.count, dimension: 'count' },
    {
      what: `What “${stage.scenario.name}” needs beyond what “${stage.before.name}” has: chambers by type, pumps by their arrangement, a hose for every chamber, works for every chamber more.`,
      inputs: [
        ...stage.scenario.chambers.map((_, k) => `${path}.chambers.${k}.count`),
        `${path}.pumpArrangement`,
        `${path}.groupSize`,
      ],
    },
  );
}

/** Things or works of one kind: their number times what one costs. */
function itemWorking(context: WorkContext, stage: Stage, item: PurchaseItem): Working {
  const { plan } = context;
  const thing = thingPath(context, item);
  const count = countTerm(context, stage, item);
  const work = WORK_PRICES[item.key];
  if (work) {
    return worked('number × price of one', 'n × p', [count, inputTerm(plan, work, 'p')], ([n = 0, p = 0]) => n * p);
  }
  if (thing === null) return sumWorking('as entered for the scenario', [extraTerm(context, stage)]);
  const price = inputTerm(plan, `${thing}.price`, 'p');
  if (!thing.startsWith('chambers'))
    return worked('number × price of one', 'n × p', [count, price], ([n = 0, p = 0]) => n * p);
  return worked(
    'number × (price + installation of one)',
    'n × (p + i)',
    [count, price, inputTerm(plan, `${thing}.installation`, 'i')],
    ([n = 0, p = 0, i = 0]) => n * (p + i),
  );
}

function extraTerm({ plan }: WorkContext, stage: Stage): Term {
  return inputTerm(plan, `${pathOf(plan, 'scenarios', stage.scenario.id)}.extraCapital`, 'x');
}

const ITEM_GROUPS: readonly string[] = ['delivery', 'contingency', 'tradeIn'];

function contingencyWorking(context: WorkContext, stage: Stage): Working {
  const { lines } = stageCapital(context.plan, stage);
  const before = lines.filter((line) => line.group === 'delivery' || !ITEM_GROUPS.includes(line.group));
  const terms = before.map((line, k) => lineTerm(context, stage, line, numbered('a', k + 1)));
  return worked(
    'share laid by × (things, works and delivery)',
    'c × (sum of all a)',
    [inputTerm(context.plan, 'site.contingency', 'c'), ...terms],
    ([share = 0, ...amounts]) => share * addUp(amounts),
  );
}

function lineWorking(context: WorkContext, stage: Stage, line: CapitalLine): Working {
  switch (line.group) {
    case 'delivery':
      return sumWorking('as entered for the shop, once for every purchase', [
        inputTerm(context.plan, 'site.delivery', 'd'),
      ]);
    case 'contingency':
      return contingencyWorking(context, stage);
    case 'tradeIn':
      return sumWorking('as entered for the scenario', [extraTerm(context, stage)]);
    default: {
      const item = purchaseItems(context.plan, stage).find((one) => one.name === line.name && one.group === line.group);
      if (!item) throw new RangeError(`nothing bought is called "${line.name}"`);
      return itemWorking(context, stage, item);
    }
  }
}

function lineTerm(context: WorkContext, stage: Stage, line: CapitalLine, symbol: string): Term {
  return workedTerm({ label: line.name, symbol, value: line.amount, dimension: 'money' }, () =>
    lineWorking(context, stage, line),
  );
}

/** Everything to be bought on the way to a scenario, line by line. */
export function capitalWorking(context: WorkContext): Working {
  const { plan, scenario } = context;
  const lines = scenarioStages(plan, scenario).flatMap((stage) =>
    stageCapital(plan, stage).lines.map((line) => ({ stage, line })),
  );
  const terms = lines.map(({ stage, line }, k) => lineTerm(context, stage, line, numbered('a', k + 1)));
  return sumWorking('chambers + pumps + hoses + works + delivery + contingency − old equipment given in', terms);
}
