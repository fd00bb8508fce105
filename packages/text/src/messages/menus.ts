import { defineMessages } from "./define.js";

export const menuMessages = defineMessages({});
