/** The version of the command; a test holds it to that of package.json. */
export const VERSION = '0.1.0';
