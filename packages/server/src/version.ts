/** The version that the server tells editors. */
export const VERSION = '0.1.0';
