import { defineMessages } from "./define.js";

export const variantMessages = defineMessages({});
