import { writeFileSync } from 'node:fs';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { goldenOutputs } from './golden-outputs.ts';

// Run only when the numbers are meant to change: npx tsx test/golden/update.ts. The commit says why they did.
const file = new URL('demo-results.json', import.meta.url);
writeFileSync(file, `${JSON.stringify(goldenOutputs(DEMO_PLAN), null, 2)}\n`);
