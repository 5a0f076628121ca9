/** How the command is called. */
export const USAGE = `Works out the scenarios of a saved plan and prints them as JSON.

  npm run --silent evaluate -- PLAN.json [--scenario NAME] [--out FILE]

  PLAN.json         a plan saved by the planner
  --scenario NAME   only the scenario of this id or name; all when left out
  --out FILE        write the results to FILE instead of the screen
  --help            print this

Quantities are in SI units, money in the plan's currency. Exit code 0, or 1 when the plan or the call is faulty: the
findings then stand in plain words on the error stream and as JSON on the output.`;
