import { defineMessages } from "./define.js";

export const lineMessages = defineMessages({});
