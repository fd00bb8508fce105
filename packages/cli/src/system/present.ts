import type { System } from './system.js';

/** The present, or what SOURCE_DATE_EPOCH says it is (reproducible-builds.org). */
export function presentMilliseconds(system: Pick<System, 'environment'>): number {
  const fixed = system.environment['SOURCE_DATE_EPOCH'];
  return fixed !== undefined && /^\d+$/.test(fixed) ? Number(fixed) * 1000 : Date.now();
}
