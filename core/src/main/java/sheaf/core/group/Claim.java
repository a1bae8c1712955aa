package sheaf.core.group;

/** Whether the arrows show that something is there, such as a drift. */
public enum Claim {
  /** The whole 95 % interval lies on one side of zero. */
  SHOWN,
  /** The interval holds zero and nothing that matters: if anything is there, it is too little. */
  NOT_SHOWN,
  /** The interval holds zero, but also what would matter; or there is no interval. */
  NOT_ENOUGH_ARROWS
}
