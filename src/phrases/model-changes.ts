/** What raising the model's number to `model` changed, in a sentence for somebody with an older link. */
export interface ModelChange {
  model: string;
  what: string;
}

/** Every change of the model's results, oldest first. The first model changed nothing: it has no line. */
export const modelChanges: readonly ModelChange[] = [
  {
    model: '2',
    what: 'bands moved, because a prediction now carries the scatter that the published regression leaves, and a gauge’s common error where one is given; the ratios themselves are those of model no. 1',
  },
  {
    model: '3',
    what: 'the words “as long” mean material cut to one end point, the effects may multiply, add as forces or run into a limit, and the answer is a range over all three; friction changes what an angle is worth; and no steel is left out any more',
  },
];
