import { diagnose, type Diagnostic } from '@quern/text';
import {
  absolute,
  compare,
  rational,
  subtract,
  multiply,
  exact,
  temperaturePoint,
  type Rational,
} from '@quern/quantity';
import { timeIn, type AtClause, type Temperature } from '@quern/syntax';
import type { Formula, StepItem } from '../model.js';
import { linePlace, placeOf } from '../places.js';

type Report = (diagnostic: Diagnostic) => void;

const DIAL = rational(8); // C: dials step (NOTATION 4.3)

/** What is asked of each step line by itself: its time, its two scales, which way its heat moves, its care. */
export function checkSteps(formula: Formula, report: Report): void {
  for (const make of formula.makes) {
    for (const item of make.items) {
      if (item.kind !== 'step') continue;
      if (!item.content.time)
        report(
          diagnose('T01', placeOf(item.ref, item.content.laneSpan), {
            lane: item.content.lane,
            time: timeIn(item.content.prose.text) || '5 min',
          }),
        );
      for (const clause of item.content.clauses) if (clause.kind === 'at') checkHeat(clause, item, report);
      checkCare(item, report);
    }
  }
}

const celsius = (value: Rational, scale: 'C' | 'F'): Rational => temperaturePoint(value, scale).celsius;

const show = (temperature: Temperature): string => {
  const one = (value: Rational): string => (value.d === 1n ? `${value.n}` : `${value.n}/${value.d}`);
  const low = one(temperature.low);
  const high = one(temperature.high);
  return low === high ? `${low} ${temperature.scale}` : `${low}-${high} ${temperature.scale}`;
};

function checkHeat(clause: AtClause, item: StepItem, report: Report): void {
  const { temperature, equal, change } = clause;
  if (equal) {
    const offLow = absolute(subtract(celsius(temperature.low, temperature.scale), celsius(equal.low, equal.scale)));
    const offHigh = absolute(subtract(celsius(temperature.high, temperature.scale), celsius(equal.high, equal.scale)));
    if (compare(offLow, DIAL) > 0 || compare(offHigh, DIAL) > 0) {
      const other =
        equal.scale === 'F'
          ? fahrenheit(celsius(temperature.low, temperature.scale))
          : round(celsius(temperature.low, temperature.scale));
      report(
        diagnose('T06', placeOf(item.ref, equal.span), {
          first: show(temperature),
          second: show(equal),
          instead: `${other} ${equal.scale}`,
        }),
      );
    }
  }
  if (!change) return;
  const from = celsius(temperature.high, temperature.scale);
  const to = celsius(change.to.low, change.to.scale);
  const wrong = change.direction === 'falling' ? compare(to, from) >= 0 : compare(to, from) <= 0;
  if (wrong) {
    report(
      diagnose('T08', placeOf(item.ref, clause.span), {
        direction: change.direction,
        from: show(temperature),
        to: show(change.to),
        other: change.direction === 'falling' ? 'rising' : 'falling',
      }),
    );
  }
}

function fahrenheit(value: Rational): string {
  return round(addThirtyTwo(multiply(value, exact('1.8'))));
}
const addThirtyTwo = (value: Rational): Rational => subtract(value, rational(-32));
/** To the nearest five, as dials are marked. */
function round(value: Rational): string {
  const fives = multiply(value, rational(1, 5));
  const whole = (fives.n * 2n + fives.d) / (fives.d * 2n);
  return String(whole * 5n);
}

/** T05: care that falls due only after the wait is over. */
function checkCare(item: StepItem, report: Report): void {
  const { time } = item.content;
  if (!time) return;
  for (const every of item.every) {
    const longest = time.kind === 'at-least' ? undefined : time.high.minutes;
    if (longest && compare(every.content.period.low.minutes, longest) >= 0) {
      report(diagnose('T05', linePlace(every.ref), {}));
    }
  }
}
