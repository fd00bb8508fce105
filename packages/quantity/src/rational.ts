/**
 * An exact fraction in lowest terms with a positive denominator. The only number in which an amount is ever held
 * between the first character read and the last character printed.
 */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

// Below 2^53 the greatest common divisor is found with machine numbers, which is several times faster than with bigints.
const SAFE = BigInt(Number.MAX_SAFE_INTEGER);

function divisor(a: bigint, b: bigint): bigint {
  if (a < 0n) a = -a;
  if (a <= SAFE && b <= SAFE) {
    let x = Number(a);
    let y = Number(b);
    while (y !== 0) [x, y] = [y, x % y];
    return BigInt(x);
  }
  while (b !== 0n) {
    [a, b] = [b, a % b];
    if (a <= SAFE && b <= SAFE) return divisor(a, b);
  }
  return a;
}

/**
 * The fraction n/d.
 * @throws RangeError when d is zero.
 */
export function rational(n: bigint | number, d: bigint | number = 1n): Rational {
  let top = BigInt(n);
  let bottom = BigInt(d);
  if (bottom === 0n) throw new RangeError('a fraction cannot have the denominator zero');
  if (bottom < 0n) {
    top = -top;
    bottom = -bottom;
  }
  if (bottom === 1n) return { n: top, d: 1n };
  const common = divisor(top, bottom);
  return common === 1n ? { n: top, d: bottom } : { n: top / common, d: bottom / common };
}

export const ZERO: Rational = { n: 0n, d: 1n };
export const ONE: Rational = { n: 1n, d: 1n };
export const HUNDRED: Rational = { n: 100n, d: 1n };

// Sums and products divide out what the terms share before they multiply, so that the numbers stay small: a sum over
// coprime denominators and a product of cross-reduced fractions are in lowest terms by themselves (Knuth, The Art of
// Computer Programming, volume 2, section 4.5.1).

export function add(a: Rational, b: Rational): Rational {
  if (a.n === 0n) return b;
  if (b.n === 0n) return a;
  if (a.d === 1n && b.d === 1n) return { n: a.n + b.n, d: 1n };
  if (a.d === b.d) return rational(a.n + b.n, a.d);
  const common = a.d === 1n || b.d === 1n ? 1n : divisor(a.d, b.d);
  if (common === 1n) return { n: a.n * b.d + b.n * a.d, d: a.d * b.d };
  const bottom = a.d / common;
  const top = a.n * (b.d / common) + b.n * bottom;
  if (top === 0n) return ZERO;
  const shared = divisor(top, common);
  return shared === 1n ? { n: top, d: bottom * b.d } : { n: top / shared, d: bottom * (b.d / shared) };
}

export function negate(a: Rational): Rational {
  return { n: -a.n, d: a.d };
}

export function subtract(a: Rational, b: Rational): Rational {
  return add(a, negate(b));
}

export function multiply(a: Rational, b: Rational): Rational {
  if (a.n === 0n || b.n === 0n) return ZERO;
  if (a.d === 1n && a.n === 1n) return b;
  if (b.d === 1n && b.n === 1n) return a;
  const left = b.d === 1n ? 1n : divisor(a.n, b.d);
  const right = a.d === 1n ? 1n : divisor(b.n, a.d);
  if (left === 1n && right === 1n) return { n: a.n * b.n, d: a.d * b.d };
  return { n: (a.n / left) * (b.n / right), d: (a.d / right) * (b.d / left) };
}

/** @throws RangeError when b is zero. */
export function divide(a: Rational, b: Rational): Rational {
  if (b.n === 0n) throw new RangeError('a fraction cannot have the denominator zero');
  return multiply(a, b.n < 0n ? { n: -b.d, d: -b.n } : { n: b.d, d: b.n });
}

/** Negative, zero or positive as a is less than, equal to or greater than b. */
export function compare(a: Rational, b: Rational): number {
  const difference = a.d === b.d ? a.n - b.n : a.n * b.d - b.n * a.d;
  return difference < 0n ? -1 : difference > 0n ? 1 : 0;
}

export const equal = (a: Rational, b: Rational): boolean => a.n === b.n && a.d === b.d;
export const less = (a: Rational, b: Rational): boolean => compare(a, b) < 0;
export const isZero = (a: Rational): boolean => a.n === 0n;
export const isWhole = (a: Rational): boolean => a.d === 1n;
export const sign = (a: Rational): number => (a.n < 0n ? -1 : a.n > 0n ? 1 : 0);
export const absolute = (a: Rational): Rational => (a.n < 0n ? negate(a) : a);
export const least = (a: Rational, b: Rational): Rational => (compare(a, b) <= 0 ? a : b);
export const greatest = (a: Rational, b: Rational): Rational => (compare(a, b) >= 0 ? a : b);
export const middle = (a: Rational, b: Rational): Rational => divide(add(a, b), { n: 2n, d: 1n });

export function sum(values: Iterable<Rational>): Rational {
  let total = ZERO;
  for (const value of values) total = add(total, value);
  return total;
}

/** The greatest whole number not above a. */
export function floor(a: Rational): bigint {
  const quotient = a.n / a.d;
  return a.n < 0n && quotient * a.d !== a.n ? quotient - 1n : quotient;
}

/** The nearest whole number; a half goes away from zero, as cooks and label rules round. */
export function round(a: Rational): bigint {
  const doubled = a.n < 0n ? -a.n * 2n + a.d : a.n * 2n + a.d;
  const whole = doubled / (a.d * 2n);
  return a.n < 0n ? -whole : whole;
}

/** The nearest multiple of `step`; a half goes away from zero. */
export function roundTo(a: Rational, step: Rational): Rational {
  return multiply({ n: round(divide(a, step)), d: 1n }, step);
}

/**
 * Reads `12`, `1.5`, `-0.25` or `3/4` exactly.
 * @returns undefined when the text is not such a number.
 */
export function parseRational(text: string): Rational | undefined {
  const found = /^(-?)(\d+)(?:\.(\d+)|\/(\d+))?$/.exec(text);
  if (!found) return undefined;
  const [, minus, whole = '0', decimals, bottom] = found;
  let value: Rational;
  if (decimals !== undefined) value = rational(BigInt(whole + decimals), 10n ** BigInt(decimals.length));
  else if (bottom !== undefined) {
    if (/^0+$/.test(bottom)) return undefined;
    value = rational(BigInt(whole), BigInt(bottom));
  } else value = { n: BigInt(whole), d: 1n };
  return minus ? negate(value) : value;
}

/** A number written in the source of this project, such as `exact('28.349523125')`. @throws RangeError when it is not a number. */
export function exact(text: string): Rational {
  const value = parseRational(text);
  if (!value) throw new RangeError(`not a number: ${text}`);
  return value;
}

/** The decimal text with exactly `places` digits after the point, rounded half away from zero. */
export function toDecimal(a: Rational, places: number): string {
  const scaled = round({ n: a.n * 10n ** BigInt(places), d: a.d });
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  const head = digits.slice(0, digits.length - places);
  const tail = places > 0 ? '.' + digits.slice(digits.length - places) : '';
  return (scaled < 0n ? '-' : '') + head + tail;
}

/** The shortest decimal text of a value that is a finite decimal, else `n/d`. Loses nothing; `parseRational` reads it back. */
export function toExactText(a: Rational): string {
  if (a.d === 1n) return a.n.toString();
  let bottom = a.d;
  let twos = 0;
  let fives = 0;
  while (bottom % 2n === 0n) {
    bottom /= 2n;
    twos++;
  }
  while (bottom % 5n === 0n) {
    bottom /= 5n;
    fives++;
  }
  return bottom === 1n ? toDecimal(a, Math.max(twos, fives)) : `${a.n}/${a.d}`;
}

// Terms of more bits than this are cut down together, so that neither becomes infinite; 53 of them decide the result.
const MACHINE_BITS = 1000;

const bitLength = (a: bigint): number => a.toString(16).length * 4;

/** The nearest machine number: for drawing, for a library that wants one, and for comparing with a tolerance in tests. Lossy by name. */
export function toApproximateNumber(a: Rational): number {
  const excess = Math.max(bitLength(a.n), bitLength(a.d)) - MACHINE_BITS;
  if (excess <= 0) return Number(a.n) / Number(a.d);
  const shift = BigInt(excess);
  return Number(a.n >> shift) / Number(a.d >> shift);
}
