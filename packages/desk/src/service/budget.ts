import type { Budget } from '@quern/views';

/** Steps of the clock's search: as far as one waits while typing. `quern clock` takes its time. */
export const BUDGET: Budget = { steps: 20_000 };
