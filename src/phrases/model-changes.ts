/** What raising the model's number to `model` changed, in a sentence for somebody with an older link. */
export interface ModelChange {
  model: string;
  what: string;
}

/** Every change of the model's results, oldest first. The first model changed nothing: it has no line. */
export const modelChanges: readonly ModelChange[] = [
  {
    model: '2',
    what: 'the ranges moved. A prediction now carries the scatter that the published line leaves. It also carries a gauge’s common error, where one is given. The ratios themselves are those of model no. 1',
  },
  {
    model: '3',
    what: 'the words “as long” mean material cut to one end point. The effects may multiply, add as forces or run into a limit, and the answer is a range over all three. Friction changes what an angle is worth. No steel is left out any more',
  },
];
