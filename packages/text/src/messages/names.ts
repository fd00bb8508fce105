import { defineMessages } from "./define.js";

export const nameMessages = defineMessages({});
