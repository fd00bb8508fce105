import { defineMessages } from "./define.js";

export const timeMessages = defineMessages({});
