package org.pourbook.job;

import static org.pourbook.job.Setting.Type.COUNT;
import static org.pourbook.job.Setting.Type.DAYS;
import static org.pourbook.job.Setting.Type.DEGREES;
import static org.pourbook.job.Setting.Type.LENGTH_FT;
import static org.pourbook.job.Setting.Type.LENGTH_IN;
import static org.pourbook.job.Setting.Type.MINUTES;
import static org.pourbook.job.Setting.Type.MONEY;
import static org.pourbook.job.Setting.Type.PERCENT;
import static org.pourbook.job.Setting.Type.RATE;
import static org.pourbook.job.Setting.Type.RATIO;
import static org.pourbook.job.Setting.Type.STRENGTH;
import static org.pourbook.job.Setting.Type.TEXT;
import static org.pourbook.job.Setting.Type.TIME;
import static org.pourbook.job.Setting.Type.VOLUME;
import static org.pourbook.job.Setting.Type.YES_NO;
import static org.pourbook.problem.Standing.COMMON_PRACTICE;
import static org.pourbook.problem.Standing.FROM_MEMORY;
import static org.pourbook.problem.Standing.PUBLISHED;

import org.pourbook.problem.Standing;

/**
 * A default that the builder may change, for every job or one, on the Practice sheet.
 *
 * <p>The default is given in US units, as the Practice sheet of an {@code ft-in} job would hold it;
 * empty means that a rule works the value out, or that there is none ({@link #NORTH}). Settings
 * with several values ({@code Ahead of pour, bar}) are {@link #ALLOWANCE} and {@link
 * #AHEAD_OF_POUR} with a material behind a comma.
 */
public enum Setting {
  WASTE_ALLOWANCE("Waste allowance", PERCENT, "", "CON-6", PUBLISHED),
  WASTE_ALLOWANCE_PIER("Waste allowance, pier", PERCENT, "20", "CON-6", COMMON_PRACTICE),
  PUMP_LOSS("Pump loss", VOLUME, "0.5", "CON-7", FROM_MEMORY),
  ORDER_STEP("Order step", VOLUME, "0.25", "CON-7", FROM_MEMORY),
  LOAD_SIZE("Load size", VOLUME, "10", "CON-8", FROM_MEMORY),
  LEAST_LOAD("Least load", VOLUME, "1", "CON-8", COMMON_PRACTICE),
  BAGGED_UP_TO("Bagged up to", VOLUME, "0.5", "CON-9", COMMON_PRACTICE),
  ORDER_CONFIDENCE("Order confidence", PERCENT, "90", "CON-10", COMMON_PRACTICE),
  SPILL("Spill", PERCENT, "3", "CON-10", PUBLISHED),
  BASE_BANK_SLOPE("Base bank slope", RATIO, "1", "CON-3", COMMON_PRACTICE),
  STRENGTH_PSI("Strength", STRENGTH, "", "BAR-2", COMMON_PRACTICE),
  START("Start", TIME, "7:00", "POUR-2", COMMON_PRACTICE),

  BASE("Base", LENGTH_IN, "4", "BASE-1", PUBLISHED),
  BASE_MARGIN("Base margin", LENGTH_IN, "6", "BASE-1", COMMON_PRACTICE),
  BASE_MATERIAL("Base material", TEXT, "clean stone", "BASE-1", COMMON_PRACTICE),
  VAPOR_RETARDER("Vapor retarder", YES_NO, "yes", "VR-1", PUBLISHED),
  RETARDER("Retarder", TEXT, "10 mil", "VR-1", PUBLISHED),
  RETARDER_LAP("Retarder lap", LENGTH_IN, "6", "VR-1", PUBLISHED),

  EDGE_COVER("Edge cover", LENGTH_IN, "3", "BAR-1", PUBLISHED),
  TOP_COVER("Top cover", LENGTH_IN, "1.5", "BAR-7", PUBLISHED),
  TOP_COVER_OUTSIDE("Top cover, outside", LENGTH_IN, "2", "BAR-7", FROM_MEMORY),
  LAP_RULE("Lap rule", TEXT, "class B", "BAR-2", FROM_MEMORY),
  BAR_GRADE("Bar grade", COUNT, "60", "BAR-2", COMMON_PRACTICE),
  SHORTEST_BAR("Shortest bar", LENGTH_IN, "12", "BAR-1", COMMON_PRACTICE),
  SUPPORT_SPACING("Support spacing", LENGTH_FT, "4", "BAR-7", FROM_MEMORY),
  SUPPORT_SPACING_MESH("Support spacing, mesh", LENGTH_FT, "3", "BAR-7", FROM_MEMORY),
  TIE_LENGTH("Tie length", LENGTH_IN, "12", "BAR-8", COMMON_PRACTICE),
  HOLE_FILL("Hole fill", RATIO, "1.5", "DOW-1", COMMON_PRACTICE),

  FORM_GAP("Form gap", LENGTH_IN, "0.75", "FORM-2", COMMON_PRACTICE),
  SHORTEST_BOARD("Shortest board", LENGTH_FT, "4", "FORM-3", COMMON_PRACTICE),
  SPLICE_LENGTH("Splice length", LENGTH_IN, "24", "FORM-3", COMMON_PRACTICE),
  STAKE_SPACING("Stake spacing", LENGTH_FT, "3", "FORM-4", COMMON_PRACTICE),
  STAKE_SPACING_HIGH("Stake spacing, high", LENGTH_FT, "2", "FORM-4", PUBLISHED),
  STAKE_LENGTH("Stake length", LENGTH_IN, "24", "FORM-4", FROM_MEMORY),
  BRACE_LENGTH("Brace length", LENGTH_IN, "36", "FORM-5", COMMON_PRACTICE),
  STRIP_AFTER("Strip after", DAYS, "1", "FORM-8", FROM_MEMORY),
  REUSE_LOSS("Reuse loss", PERCENT, "10", "FORM-8", COMMON_PRACTICE),

  BOLT("Bolt", TEXT, "1/2 x 10", "BOLT-3", FROM_MEMORY),
  PLATE_THICKNESS("Plate thickness", LENGTH_IN, "1.5", "BOLT-3", FROM_MEMORY),
  PLATE_PIECE("Plate piece", LENGTH_FT, "16", "BOLT-1", COMMON_PRACTICE),
  BOLT_END_DISTANCE("Bolt end distance", LENGTH_IN, "9", "BOLT-2", COMMON_PRACTICE),
  BOLT_TOLERANCE("Bolt tolerance", LENGTH_IN, "2", "BOLT-2", COMMON_PRACTICE),
  SPARE_BOLTS("Spare bolts", PERCENT, "5", "BOLT-5", COMMON_PRACTICE),

  SEAL_JOINTS("Seal joints", YES_NO, "no", "JOINT-3", COMMON_PRACTICE),
  STRIP_WIDTH("Strip width", LENGTH_FT, "10", "POUR-1", FROM_MEMORY),
  PLACING_RATE_CHUTE("Placing rate, chute", RATE, "15", "POUR-2", COMMON_PRACTICE),
  PLACING_RATE_PUMP("Placing rate, pump", RATE, "20", "POUR-2", COMMON_PRACTICE),
  PLACING_RATE_BARROW("Placing rate, barrow", RATE, "3", "POUR-2", FROM_MEMORY),
  MINUTES_AWAY("Minutes away", MINUTES, "30", "POUR-3", COMMON_PRACTICE),
  RAIN_LIMIT("Rain limit", PERCENT, "40", "POUR-5", COMMON_PRACTICE),
  NORTH("North", DEGREES, "", "Plans", COMMON_PRACTICE),

  ALLOWANCE("Allowance", PERCENT, "", "BUY-1", COMMON_PRACTICE),
  SPARE_PIECES("Spare pieces", COUNT, "0", "BUY-1", COMMON_PRACTICE),
  SAW_KERF("Saw kerf", LENGTH_IN, "0.125", "CUT-1", COMMON_PRACTICE),
  SAW_KERF_BAR("Saw kerf, bar", LENGTH_IN, "0", "CUT-1", COMMON_PRACTICE),
  CUT_STEP("Cut step", LENGTH_IN, "", "CUT-1", COMMON_PRACTICE),
  KEEP_OFFCUTS("Keep offcuts", LENGTH_FT, "4", "CUT-1", COMMON_PRACTICE),
  COST_OF_ANOTHER_STOP("Cost of another stop", MONEY, "0", "BUY-3", COMMON_PRACTICE),
  AHEAD_OF_POUR("Ahead of pour", DAYS, "", "BUY-5", COMMON_PRACTICE),
  DELIVER_TOGETHER("Deliver together", DAYS, "7", "BUY-5", COMMON_PRACTICE),
  QUOTATION_DAYS("Quotation days", DAYS, "30", "BUY-5", COMMON_PRACTICE),

  QUANTITY_DIFFERENCE("Quantity difference", PERCENT, "5", "TICK-2", COMMON_PRACTICE),
  PRICE_DIFFERENCE("Price difference", PERCENT, "1", "TICK-2", COMMON_PRACTICE),
  DISCHARGE_LIMIT("Discharge limit", MINUTES, "90", "TICK-4", FROM_MEMORY);

  /** What a setting holds, and the unit of a bare number: in an ft-in job, then in an m job. */
  public enum Type {
    PERCENT("%", "%"),
    /** Held in m3. */
    VOLUME("yd3", "m3"),
    /** Held in m3 an hour. */
    RATE("yd3/h", "m3/h"),
    MINUTES("min", "min"),
    DAYS("days", "days"),
    RATIO("", ""),
    COUNT("", ""),
    MONEY("money", "money"),
    /** A direction of the plan: 0 is up the sheet, along Y; 90 to the right, along X. */
    DEGREES("0 to 360 degrees clockwise from Y", "0 to 360 degrees clockwise from Y"),
    /** Held in psi. */
    STRENGTH("psi", "MPa"),
    LENGTH_IN("in", "mm"),
    LENGTH_FT("ft", "m"),
    TIME("time", "time"),
    TEXT("", ""),
    YES_NO("yes/no", "yes/no");

    private final String unit;
    private final String metricUnit;

    Type(String unit, String metricUnit) {
      this.unit = unit;
      this.metricUnit = metricUnit;
    }

    public String unit() {
      return unit;
    }

    public String metricUnit() {
      return metricUnit;
    }
  }

  private final String label;
  private final Type type;
  private final String usual;
  private final String rule;
  private final Standing standing;

  Setting(String label, Type type, String usual, String rule, Standing standing) {
    this.label = label;
    this.type = type;
    this.usual = usual;
    this.rule = rule;
    this.standing = standing;
  }

  /** Returns the name on the Practice sheet. */
  public String label() {
    return label;
  }

  public Type type() {
    return type;
  }

  /** Returns what a value is where nothing is written and there is no default. */
  public String whenBlank() {
    return type == DEGREES ? "none" : "by rule";
  }

  /** Returns the default in US units, empty where a rule works it out. */
  public String usual() {
    return usual;
  }

  /** Returns the id of the rule that uses it, under which the source stands. */
  public String rule() {
    return rule;
  }

  public Standing standing() {
    return standing;
  }
}
