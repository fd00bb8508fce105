import { isPlainPath, MOST_LETTERS } from '../share.js';
import { button, byId, make } from './dom.js';

/* Everything that asks or explains, in one dialog of the browser's own: it keeps the focus, and Escape closes it. */

function open(title: string, ...content: readonly (Node | string)[]): HTMLDialogElement {
  const dialog = byId<HTMLDialogElement>('dialog');
  dialog.replaceChildren(make('h2', { id: 'dialog-title' }, title), ...content);
  dialog.returnValue = '';
  dialog.showModal();
  return dialog;
}

function closeButton(dialog: () => HTMLDialogElement, words = 'Close'): HTMLButtonElement {
  return button(words, () => dialog().close());
}

const theDialog = (): HTMLDialogElement => byId<HTMLDialogElement>('dialog');

const KEYS: readonly (readonly [string, string])[] = [
  ['F6', 'from the text to the results and back'],
  ['Left, Right, Home, End', 'on the tabs: another way to look'],
  ['F8, Shift F8', 'to the next message, to the one before'],
  ['Ctrl .', 'what can be done at the cursor: fixes and changes'],
  ['Ctrl Space', 'what can stand at the cursor'],
  ['Ctrl S', 'save'],
  ['Ctrl O', 'open'],
  ['Ctrl F', 'find and replace in the text'],
  ['Ctrl Z, Ctrl Y', 'undo, and do again'],
  ['Tab', 'on to the next button: the editor does not keep it'],
];

export function showKeys(apple: boolean): void {
  const spelled = (keys: string): string =>
    apple ? keys.replace(/Ctrl Y/, 'Shift Ctrl Z').replace(/Ctrl/g, '⌘') : keys;
  open(
    'Keys',
    make(
      'dl',
      { class: 'keys' },
      ...KEYS.flatMap(([keys, does]) => [make('dt', {}, make('kbd', {}, spelled(keys))), make('dd', {}, does)]),
    ),
    make(
      'p',
      {},
      'What you write stays in this page until you save it or share it. The desk keeps nothing, sends nothing and asks no other machine for anything.',
    ),
    make('p', { class: 'dialog-acts' }, closeButton(theDialog)),
  );
}

/** Asks for the name of a file; undefined when the person thinks better of it. */
export function askName(title: string, wanted: string, taken: (path: string) => boolean): Promise<string | undefined> {
  return new Promise((resolve) => {
    const field = make('input', { type: 'text', id: 'name', value: wanted, autocomplete: 'off', spellcheck: 'false' });
    field.value = wanted;
    field.setAttribute('aria-describedby', 'name-problem');
    const problem = make('p', { id: 'name-problem', class: 'problem', role: 'alert' });
    let name: string | undefined;
    const done = (): void => {
      const typed = field.value.trim();
      const path = /\.quern$/i.test(typed) ? typed : `${typed}.quern`;
      const wrong = !isPlainPath(path)
        ? 'Write a name such as harbour-white, with no signs that a file cannot have.'
        : taken(path)
          ? 'There is a file of this name already.'
          : undefined;
      if (wrong !== undefined) {
        problem.textContent = wrong;
        field.setAttribute('aria-invalid', 'true');
        return;
      }
      name = path;
      theDialog().close();
    };
    field.addEventListener('keydown', (event) => {
      if (event.key !== 'Enter') return;
      // Else the key would go on to the button that has the focus when the dialog is gone.
      event.preventDefault();
      done();
    });
    const dialog = open(
      title,
      make('p', {}, make('label', { for: 'name' }, 'Name of the file'), field),
      problem,
      make('p', { class: 'dialog-acts' }, button('Make it', done), closeButton(theDialog, 'Leave it')),
    );
    field.select();
    dialog.addEventListener('close', () => resolve(name), { once: true });
  });
}

/** Asks a question with a few answers; undefined when it is closed without one. */
export function ask<T extends string>(
  title: string,
  words: string,
  answers: Readonly<Record<T, string>>,
): Promise<T | undefined> {
  return new Promise((resolve) => {
    let given: T | undefined;
    const buttons = (Object.entries(answers) as [T, string][]).map(([answer, said]) =>
      button(said, () => {
        given = answer;
        theDialog().close();
      }),
    );
    const dialog = open(
      title,
      make('p', {}, words),
      make('p', { class: 'dialog-acts answers' }, ...buttons, closeButton(theDialog, 'Leave it')),
    );
    dialog.addEventListener('close', () => resolve(given), { once: true });
  });
}

/** Offers a list of things that can be done. */
export async function chooseOf(title: string, words: readonly string[]): Promise<number | undefined> {
  const answer = await ask(
    title,
    words.length === 0 ? 'Nothing is offered for what stands here.' : 'Every change can be undone.',
    Object.fromEntries(words.map((word, index) => [String(index), word])),
  );
  return answer === undefined ? undefined : Number(answer);
}

/** Shows the link that holds the files; undefined when they are too large for one. */
export function showLink(link: string | undefined, local: boolean): void {
  if (link === undefined) {
    open(
      'Share by a link',
      make(
        'p',
        {},
        `This recipe and the files that it uses are too large for a link: packed, they may have ${MOST_LETTERS} letters. Save the files and send them instead.`,
      ),
      make('p', { class: 'dialog-acts' }, closeButton(theDialog)),
    );
    return;
  }
  const field = make('textarea', { id: 'link', readonly: true, rows: '4', spellcheck: 'false' });
  field.value = link;
  const said = make('p', { class: 'quiet', role: 'status' });
  const copy = button('Copy', () => {
    field.select();
    const copied = navigator.clipboard?.writeText(link) ?? Promise.reject(new Error('no clipboard'));
    copied.then(
      () => (said.textContent = 'Copied.'),
      () => (said.textContent = 'This browser does not let the page copy: the link is selected, copy it by hand.'),
    );
  });
  open(
    'Share by a link',
    make(
      'p',
      {},
      local
        ? 'This desk runs on your computer alone, so its own address is of no use to others. Put this after the address of a desk on the web:'
        : 'The link itself holds the recipe and the files that it uses. Nothing has been sent to anybody; whoever gets the link can read it.',
    ),
    make('p', {}, make('label', { for: 'link' }, 'Link'), field),
    said,
    make('p', { class: 'dialog-acts' }, copy, closeButton(theDialog)),
  );
  field.select();
}
