package longbough.model.surgery;

/** The tools of one crew, all at work on the same tree; one a thread, reused. */
public final class Surgery {
  public final Worksite site = new Worksite();
  public final SproutSurgery sprouts;
  public final LimbSurgery limbs;
  public final Shortening shortening;
  public final TrunkSurgery trunk;

  public Surgery() {
    WoundOpener opener = new WoundOpener(site);
    sprouts = new SproutSurgery(site, opener);
    limbs = new LimbSurgery(site, opener, sprouts);
    shortening = new Shortening(site, opener, limbs, sprouts);
    trunk = new TrunkSurgery(site, opener, limbs, sprouts);
  }
}
