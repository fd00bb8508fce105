/** The part of the UCUM library that the checks use; it comes without types. */
declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    readonly status: 'succeeded' | 'failed' | 'error';
    readonly toVal: number | null;
  }
  export const UcumLhcUtils: {
    getInstance(): { convertUnitTo(from: string, value: number, to: string): Conversion };
  };
}
