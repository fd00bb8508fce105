/** Name of the file that goes with a bundle: the licences of what it holds of others. */
export const NOTICES: string;
