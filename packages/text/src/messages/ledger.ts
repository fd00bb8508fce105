import { defineMessages } from "./define.js";

export const ledgerMessages = defineMessages({});
