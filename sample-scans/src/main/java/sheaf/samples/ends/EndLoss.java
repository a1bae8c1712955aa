package sheaf.samples.ends;

import ai.djl.ndarray.NDArray;
import ai.djl.nn.Activation;
import sheaf.scanner.tear.EndNet;

/**
 * What a net's errors cost: of its odds by how much they are off, less near an end and for what is
 * easy already (the focal loss of Lin et al., "Focal loss for dense object detection", 2017, as
 * Zhou et al. use it for centres in "Objects as points", 2019); of its places by the likelihood of
 * a Laplace distribution whose spread the net says itself.
 */
final class EndLoss {

  /** Places, ways and sorts count half as much as odds. */
  private static final float HALF = 0.5f;

  /** Ways are said in tens of millimetres. */
  private static final float WAY_MM = 10;

  private EndLoss() {}

  private static NDArray at(NDArray planes, int from, int to) {
    return planes.get(":, " + from + ":" + to + ", :, :");
  }

  /** Of what a net said and should have said: what to add up. */
  static NDArray[] of(NDArray said, NDArray want) {
    NDArray tailHere = at(want, 0, 1);
    NDArray tailTells = at(want, 2, 3);
    NDArray pointHere = at(want, 5, 6);
    NDArray pointTells = at(want, 7, 8);
    NDArray tail = heat(at(said, 0, 1), tailHere, at(want, 1, 2));
    NDArray point = heat(at(said, 1, 2), pointHere, at(want, 6, 7));
    NDArray tailAt = place(at(said, 2, 4), at(said, 4, 5), at(want, 3, 5), tailTells);
    NDArray pointAt = place(at(said, 5, 7), at(said, 7, 8), at(want, 8, 10), pointTells);
    NDArray ways =
        way(at(said, 8, 10), at(want, 10, 12), tailTells)
            .add(way(at(said, 10, 12), at(want, 12, 14), pointTells));
    NDArray sorts =
        sort(at(said, 12, 13), at(want, 14, 15), tailTells)
            .add(sort(at(said, 13, 14), at(want, 15, 16), tailTells).mul(HALF));
    return new NDArray[] {
      tail, point, tailAt.mul(HALF), pointAt.mul(HALF), ways.mul(HALF), sorts.mul(HALF)
    };
  }

  private static NDArray softplus(NDArray x) {
    return x.abs().neg().exp().add(1).log().add(x.maximum(0));
  }

  private static NDArray heat(NDArray said, NDArray here, NDArray cost) {
    NDArray logit = said.sub(EndNet.SELDOM);
    NDArray p = Activation.sigmoid(logit);
    NDArray yes = softplus(logit.neg()).mul(p.neg().add(1).square()).mul(here);
    NDArray no = softplus(logit).mul(p.square()).mul(cost).mul(here.neg().add(1));
    return yes.add(no).sum().div(here.sum().add(1));
  }

  private static NDArray place(NDArray said, NDArray raw, NDArray want, NDArray tells) {
    NDArray spread = raw.div(EndNet.MOST_LOG).tanh().mul(EndNet.MOST_LOG);
    NDArray off = said.sub(want).abs().sum(new int[] {1}, true);
    NDArray cost = off.mul(spread.neg().exp()).add(spread.mul(2));
    return cost.mul(tells).sum().div(tells.sum().add(1));
  }

  private static NDArray way(NDArray said, NDArray want, NDArray tells) {
    NDArray off = said.sub(want.div(WAY_MM)).abs().sum(new int[] {1}, true);
    return off.mul(tells).sum().div(tells.sum().add(1));
  }

  private static NDArray sort(NDArray said, NDArray want, NDArray tells) {
    return softplus(said).sub(said.mul(want)).mul(tells).sum().div(tells.sum().add(1));
  }
}
