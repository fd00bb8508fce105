/** Characters that a terminal obeys, or that turn a line round: a file may be called by them, and a recipe may hold them. */
const OBEYED = /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]|\p{Surrogate}/gu;

/** A name or a message as one line that a terminal only shows; each character that it would obey is one U+FFFD. */
export const plain = (text: string): string => text.replace(OBEYED, '\uFFFD');
