/**
 * The model's number. It changes whenever any result does, so that a page or link can say which model it was made
 * with; a test holds the results against it.
 */
export const MODEL_NUMBER = '3';
