import { defineMessages } from "./define.js";

export const amountMessages = defineMessages({});
