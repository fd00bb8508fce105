import type { Answer, Question } from '../protocol.js';
import type { DeskService } from './desk-service.js';

/** The end of a channel at which questions come in: a worker's own, or that of a `MessageChannel`. */
export interface Port {
  postMessage(message: Answer): void;
  onmessage: ((event: MessageEvent<Question>) => unknown) | null;
}

/** Answers whatever comes in at a port, one after the other. */
export function serve(service: DeskService, port: Port): void {
  port.onmessage = ({ data: { number, kind, body } }) => {
    port.postMessage(answerOf(service, number, kind, body));
  };
}

function answerOf(service: DeskService, number: number, kind: Question['kind'], body: Question['body']): Answer {
  try {
    return { number, answer: service.answer(kind, body) };
  } catch (error) {
    // A fault of ours must not leave the page waiting; it says so and the text stays as it is.
    return { number, fault: error instanceof Error ? error.message : String(error) };
  }
}
