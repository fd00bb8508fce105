export { compareInputs as inputsOf, type CompareInputOptions as InputOptions } from '@quern/publish';
