import { defineMessages } from "./define.js";

export const labelMessages = defineMessages({});
