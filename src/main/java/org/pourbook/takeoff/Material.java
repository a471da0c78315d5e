package org.pourbook.takeoff;

import static org.pourbook.takeoff.Material.Planning.BY_POUR;
import static org.pourbook.takeoff.Material.Planning.COUNTED;
import static org.pourbook.takeoff.Material.Planning.CUT;
import static org.pourbook.takeoff.Material.Planning.SERVICE;
import static org.pourbook.takeoff.Material.Planning.STRIPS;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/**
 * The materials that rules ask for, each with its own unit in either system, how its need is worked
 * out, its usual allowance (BUY-1) and how many working days before the pour it is needed (BUY-5).
 * Extras may ask for any other name.
 */
public enum Material {
  CONCRETE("concrete", Unit.YD3, Unit.M3, BY_POUR, 0, 0),
  BAGGED_CONCRETE("bagged concrete", Unit.YD3, Unit.M3, COUNTED, 0, 2),
  BAR("bar", Unit.FT, Unit.M, CUT, 0, 3),
  MESH("mesh", Unit.FT2, Unit.M2, STRIPS, 0, 3),
  FIBER("fiber", Unit.LB, Unit.KG, COUNTED, 0, 2),
  DOWEL("dowel", Unit.EACH, Unit.EACH, COUNTED, 0, 3),
  BAR_SUPPORT("bar support", Unit.EACH, Unit.EACH, COUNTED, 10, 3),
  TIE_WIRE("tie wire", Unit.LB, Unit.KG, COUNTED, 10, 3),
  FORM_BOARD("form board", Unit.FT, Unit.M, CUT, 0, 5),
  STAKE("stake", Unit.EACH, Unit.EACH, COUNTED, 5, 5),
  BRACE("brace", Unit.EACH, Unit.EACH, COUNTED, 5, 5),
  FORM_SCREW("form screw", Unit.EACH, Unit.EACH, COUNTED, 10, 5),
  FORM_RELEASE("form release", Unit.GAL, Unit.L, COUNTED, 0, 2),
  ANCHOR_BOLT("anchor bolt", Unit.EACH, Unit.EACH, COUNTED, 0, 2),
  PLATE_WASHER("plate washer", Unit.EACH, Unit.EACH, COUNTED, 0, 2),
  NUT("nut", Unit.EACH, Unit.EACH, COUNTED, 0, 2),
  BASE_GRAVEL("base gravel", Unit.TON, Unit.T, COUNTED, 0, 5),
  VAPOR_RETARDER("vapor retarder", Unit.FT2, Unit.M2, STRIPS, 0, 3),
  SEAM_TAPE("seam tape", Unit.FT, Unit.M, COUNTED, 0, 3),
  JOINT_FILLER("joint filler", Unit.FT, Unit.M, COUNTED, 0, 2),
  JOINT_SEALANT("joint sealant", Unit.GAL, Unit.L, COUNTED, 0, 1),
  ANCHORING_ADHESIVE("anchoring adhesive", Unit.GAL, Unit.L, COUNTED, 0, 2),
  CURING_COMPOUND("curing compound", Unit.GAL, Unit.L, COUNTED, 0, 1),
  FORM_TUBE("form tube", Unit.EACH, Unit.EACH, COUNTED, 0, 5),
  SPLICE("splice", Unit.EACH, Unit.EACH, COUNTED, 0, 5),
  BAR_CAP("bar cap", Unit.EACH, Unit.EACH, COUNTED, 0, 2),
  DOWEL_SLEEVE("dowel sleeve", Unit.EACH, Unit.EACH, COUNTED, 0, 2),
  BACKER_ROD("backer rod", Unit.FT, Unit.M, COUNTED, 0, 1),
  SILL_GASKET("sill gasket", Unit.FT, Unit.M, COUNTED, 0, 2),
  PUMP("pump", Unit.EACH, Unit.EACH, SERVICE, 0, 0),
  SAW_CUTTING("saw cutting", Unit.FT, Unit.M, SERVICE, 0, 0),
  PLACING_LABOR("placing labor", Unit.HOUR, Unit.HOUR, SERVICE, 0, 0),
  FINISHING_LABOR("finishing labor", Unit.HOUR, Unit.HOUR, SERVICE, 0, 0);

  /** How the need of a material follows from its quantities. */
  public enum Planning {
    /** Net × (1 + allowance), packs rounded up; shared by a delivery. */
    COUNTED,
    /** A cut plan over stock lengths. */
    CUT,
    /** Laid strips out of whole rolls or sheets. */
    STRIPS,
    /** Concrete: ordered by job, pour and mix (CON-7). */
    BY_POUR,
    /** Work done at the job's own site. */
    SERVICE;

    /** Returns whether it is brought and may lie: concrete is poured, services are done. */
    public boolean isOfGoods() {
      return this != BY_POUR && this != SERVICE;
    }
  }

  private static final Map<String, Material> BY_NAME =
      Stream.of(values())
          .collect(
              Collectors.toUnmodifiableMap(
                  material -> MaterialKey.normal(material.label), material -> material));

  private final String label;
  private final Unit unit;
  private final Unit metricUnit;
  private final Planning planning;
  private final int allowancePercent;
  private final int aheadOfPourDays;

  Material(
      String label, Unit unit, Unit metricUnit, Planning planning, int allowance, int aheadDays) {
    this.label = label;
    this.unit = unit;
    this.metricUnit = metricUnit;
    this.planning = planning;
    this.allowancePercent = allowance;
    this.aheadOfPourDays = aheadDays;
  }

  /** Returns the name in price books. */
  public String label() {
    return label;
  }

  /** Returns the material's own unit, in which Net and Needed are given. */
  public Unit unit(UnitSystem units) {
    return units.isMetric() ? metricUnit : unit;
  }

  public Planning planning() {
    return planning;
  }

  /** Returns the usual allowance in percent (BUY-1). */
  public int allowancePercent() {
    return allowancePercent;
  }

  /** Returns the usual working days ahead of the pour (BUY-5). */
  public int aheadOfPourDays() {
    return aheadOfPourDays;
  }

  /**
   * Returns whether jobs with a shared Deliver to may share its packs (BUY-4): not concrete, base
   * or services, which go to the job's own site.
   */
  public boolean isShareable() {
    return planning.isOfGoods() && this != BASE_GRAVEL;
  }

  /** Returns the key of this material in a size. */
  public MaterialKey of(String size) {
    return new MaterialKey(label, size);
  }

  /** Returns the material of that name, ignoring case. */
  public static Optional<Material> named(String name) {
    return Optional.ofNullable(BY_NAME.get(MaterialKey.normal(name)));
  }
}
