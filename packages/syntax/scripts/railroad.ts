import type { EbnfRule, Expression } from './ebnf.js';

/*
 * Railroad diagrams of the grammar as one page of plain SVG: no script, no font, no request. Black and white at heart,
 * so that it prints; the lines are for the eye, and each diagram carries its rule as text for everybody else.
 */

/** A piece of track: how wide it is, how far it reaches above and below its line, and how to draw it. */
interface Piece {
  readonly width: number;
  readonly up: number;
  readonly down: number;
  draw(x: number, y: number): string;
}

const GAP = 12;
const BOX = 26;
const ROW = 10;
const CURVE = 10;
/** Width of a character of the page's monospaced type at 13 px. */
const CHARACTER = 7.9;

const escape = (text: string): string => text.replace(/[&<>"]/g, (mark) => `&#${mark.charCodeAt(0)};`);
const path = (d: string): string => `<path d="${d}"/>`;
const track = (x: number, y: number, width: number): string => (width > 0 ? path(`M${x} ${y}h${width}`) : '');

function box(text: string, kind: 'literal' | 'name' | 'special'): Piece {
  const width = Math.ceil(text.length * CHARACTER) + 20;
  return {
    width,
    up: BOX / 2,
    down: BOX / 2,
    draw: (x, y) => {
      const shape = `<rect class="${kind}" x="${x}" y="${y - BOX / 2}" width="${width}" height="${BOX}" rx="${kind === 'literal' ? BOX / 2 : 2}"/>`;
      const words = `<text x="${x + width / 2}" y="${y + 4.5}">${escape(text)}</text>`;
      return kind === 'name' ? `<a href="#${text}">${shape}${words}</a>` : shape + words;
    },
  };
}

const nothing: Piece = { width: 0, up: 0, down: 0, draw: () => '' };

function row(pieces: readonly Piece[]): Piece {
  if (pieces.length === 0) return nothing;
  return {
    width: pieces.reduce((width, piece) => width + piece.width, GAP * (pieces.length - 1)),
    up: Math.max(...pieces.map(({ up }) => up)),
    down: Math.max(...pieces.map(({ down }) => down)),
    draw: (x, y) => {
      let at = x;
      return pieces
        .map((piece, index) => {
          const lead = index === 0 ? '' : track(at, y, GAP);
          at += index === 0 ? 0 : GAP;
          const drawn = piece.draw(at, y);
          at += piece.width;
          return lead + drawn;
        })
        .join('');
    },
  };
}

/** Ways one under the other; the first stands on the line. */
function ways(pieces: readonly Piece[]): Piece {
  const [first = nothing, ...others] = pieces;
  const inner = Math.max(...pieces.map(({ width }) => width));
  const width = inner + 4 * CURVE;
  const offsets: number[] = [];
  let down = first.down;
  for (const piece of others) {
    const offset = Math.max(down + ROW + piece.up, 2 * CURVE);
    offsets.push(offset);
    down = offset + piece.down;
  }
  return {
    width,
    up: first.up,
    down,
    draw: (x, y) => {
      const across = (piece: Piece, at: number): string =>
        piece.draw(x + 2 * CURVE, at) + track(x + 2 * CURVE + piece.width, at, inner - piece.width);
      const straight = track(x, y, 2 * CURVE) + across(first, y) + track(x + width - 2 * CURVE, y, 2 * CURVE);
      const bends = others.map((piece, index) => {
        const offset = offsets[index] ?? 0;
        const drop = offset - 2 * CURVE;
        const away = path(`M${x} ${y}q${CURVE} 0 ${CURVE} ${CURVE}v${drop}q0 ${CURVE} ${CURVE} ${CURVE}`);
        const back = path(`M${x + width} ${y}q${-CURVE} 0 ${-CURVE} ${CURVE}v${drop}q0 ${CURVE} ${-CURVE} ${CURVE}`);
        return away + across(piece, y + offset) + back;
      });
      return straight + bends.join('');
    },
  };
}

/** None or more: past it, or through it and back over the top. */
function loop(piece: Piece): Piece {
  const width = piece.width + 2 * CURVE;
  const rise = piece.up + ROW;
  const again: Piece = {
    width,
    up: rise + 2,
    down: piece.down,
    draw: (x, y) => {
      const back = `M${x + width - CURVE} ${y}q${CURVE} 0 ${CURVE} ${-CURVE}v${2 * CURVE - rise}q0 ${-CURVE} ${-CURVE} ${-CURVE}h${-piece.width}q${-CURVE} 0 ${-CURVE} ${CURVE}v${rise - 2 * CURVE}q0 ${CURVE} ${CURVE} ${CURVE}`;
      return track(x, y, CURVE) + piece.draw(x + CURVE, y) + track(x + CURVE + piece.width, y, CURVE) + path(back);
    },
  };
  return ways([nothing, again]);
}

function piece(expression: Expression): Piece {
  switch (expression.kind) {
    case 'literal':
      return box(expression.text, 'literal');
    case 'name':
      return box(expression.name, 'name');
    case 'special':
      return box(expression.text, 'special');
    case 'sequence':
      return row(expression.parts.map(piece));
    case 'choice':
      return ways(expression.parts.map(piece));
    case 'option':
      return ways([nothing, piece(expression.part)]);
    case 'repetition':
      return loop(piece(expression.part));
  }
}

/** The rule as a line of EBNF, for those who do not see the drawing. */
export function spelled(expression: Expression): string {
  switch (expression.kind) {
    case 'literal':
      return `"${expression.text}"`;
    case 'name':
      return expression.name;
    case 'special':
      return `? ${expression.text} ?`;
    case 'sequence':
      return expression.parts
        .map((part) => (part.kind === 'choice' ? `( ${spelled(part)} )` : spelled(part)))
        .join(', ');
    case 'choice':
      return expression.parts.map(spelled).join(' | ');
    case 'option':
      return `[ ${spelled(expression.part)} ]`;
    case 'repetition':
      return `{ ${spelled(expression.part)} }`;
  }
}

function diagram({ name, body }: EbnfRule): string {
  const drawn = row([piece(body)]);
  const margin = 16;
  const [width, height] = [drawn.width + 4 * margin, drawn.up + drawn.down + margin];
  const y = drawn.up + margin / 2;
  const end = width - margin;
  const posts = path(`M${margin} ${y - 8}v16M${end} ${y - 8}v16`);
  const lines = track(margin, y, margin) + drawn.draw(2 * margin, y) + track(2 * margin + drawn.width, y, margin);
  return `<svg role="img" aria-label="${escape(`${name} = ${spelled(body)}`)}" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${posts}${lines}</svg>`;
}

/** Whether a rule is only a list of words: told as a list, which is shorter than any drawing. */
function isWordList({ body }: EbnfRule): boolean {
  return body.kind === 'choice' && body.parts.length > 8 && body.parts.every(({ kind }) => kind === 'literal');
}

function section(rule: EbnfRule): string {
  const words = rule.body.kind === 'choice' ? rule.body.parts : [];
  const list = words.map((word) => `<code>${escape(word.kind === 'literal' ? word.text : '')}</code>`).join(' ');
  const shown = isWordList(rule) ? `<p>one of ${list}</p>` : `<div class="track">${diagram(rule)}</div>`;
  const comments = rule.comments.map((comment) => `<p>${escape(comment)}</p>`).join('\n');
  return `<section id="${rule.name}">\n<h2>${rule.name}</h2>\n${shown}\n${comments}</section>`;
}

/** The page. */
export function railroadPage(rules: readonly EbnfRule[]): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>The grammar of Quern, drawn</title>
<style>
:root { color-scheme: light dark; }
body { font: 16px/1.5 system-ui, sans-serif; max-width: 70rem; margin: 2rem auto; padding: 0 1rem; }
h2 { font-size: 1rem; margin: 2rem 0 0.25rem; }
p { margin: 0.25rem 0; }
nav { columns: 12rem; }
nav a { display: block; }
.track { overflow-x: auto; }
svg text { font: 13px ui-monospace, monospace; text-anchor: middle; fill: currentColor; }
svg path, svg rect { fill: none; stroke: currentColor; stroke-width: 1.5; }
svg rect.special { stroke-dasharray: 4 3; }
svg a:hover rect, svg a:focus rect { stroke-width: 3; }
@media print { .track { overflow: visible; } svg { max-width: 100%; height: auto; } nav { display: none; } }
</style>
</head>
<body>
<h1>The grammar of Quern, drawn</h1>
<p>Made from quern.ebnf. Round: written as it stands, in small or capital letters. Square: another rule. Follow a track from left to right.</p>
<nav>${rules.map(({ name }) => `<a href="#${name}">${name}</a>`).join('')}</nav>
${rules.map(section).join('\n')}
</body>
</html>
`;
}
