import type { InlayOptions } from '@quern/ide';
import { objectOf } from './client.js';

/** What a user can set, under `quern` in the settings of the editor. */
export interface Settings {
  readonly hints: InlayOptions;
  readonly codeLens: boolean;
  /** Checks of the label and the clock when nobody types. */
  readonly slowChecks: boolean;
  readonly market: string;
  readonly measures: 'both' | 'metric' | 'us';
}

export const DEFAULT_SETTINGS: Settings = {
  hints: { otherMeasure: true, bakersPercent: true, potWeight: false },
  codeLens: true,
  slowChecks: true,
  market: 'none',
  measures: 'both',
};

/** Settings as an editor sends them: what is missing or of another type is as it is by default. */
export function readSettings(sent: unknown): Settings {
  const from = objectOf(sent);
  const hints = objectOf(from['hints']);
  const choice = <T extends string>(value: unknown, choices: readonly T[], otherwise: T): T =>
    choices.find((one) => one === value) ?? otherwise;
  const flag = (value: unknown, otherwise: boolean): boolean => (typeof value === 'boolean' ? value : otherwise);
  const { hints: usual } = DEFAULT_SETTINGS;
  return {
    hints: {
      otherMeasure: flag(hints['otherMeasure'], usual.otherMeasure),
      bakersPercent: flag(hints['bakersPercent'], usual.bakersPercent),
      potWeight: flag(hints['potWeight'], usual.potWeight),
    },
    codeLens: flag(from['codeLens'], DEFAULT_SETTINGS.codeLens),
    slowChecks: flag(from['slowChecks'], DEFAULT_SETTINGS.slowChecks),
    market: typeof from['market'] === 'string' ? from['market'] : DEFAULT_SETTINGS.market,
    measures: choice(from['measures'], ['both', 'metric', 'us'], DEFAULT_SETTINGS.measures),
  };
}
