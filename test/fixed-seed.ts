import { configureGlobal } from 'fast-check';

// Random examples are the same on every run, so that a test that fails here fails everywhere. To look further, change the number.
configureGlobal({ seed: 20_240_229 });
