package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material;

/** Random jobs and price books, the same for the same seed. */
final class RandomBatch {
  private static final List<Material> COUNTED =
      List.of(Material.NUT, Material.STAKE, Material.FORM_SCREW, Material.BAR_SUPPORT);
  private static final List<String> DAYS =
      List.of("2027-04-13", "2027-04-14", "2027-04-17", "2027-05-03");

  private final SplittableRandom random;

  RandomBatch(SplittableRandom random) {
    this.random = random;
  }

  List<Given> jobs() {
    List<Given> jobs = new ArrayList<>();
    for (int i = random.nextInt(1, 5); i > 0; i--) {
      jobs.add(job("J" + i));
    }
    return jobs;
  }

  private Given job(String code) {
    Given job = Given.job(code).set(Setting.SPARE_PIECES, random.nextInt(3) / 2);
    if (random.nextInt(3) > 0) {
      job.deliverTo(random.nextInt(3) == 0 ? "barn" : "yard");
    }
    if (random.nextBoolean()) {
      job.tax(random.nextInt(3) + ".25");
    }
    int pours = random.nextInt(1, 3);
    for (int pour = 1; pour <= pours && random.nextInt(5) > 0; pour++) {
      job.pour(DAYS.get(random.nextInt(DAYS.size())));
    }
    needs(job, 1);
    if (job.job().pours().size() == 2) {
      needs(job, 2);
    }
    return job;
  }

  private void needs(Given job, int pour) {
    for (Material material : COUNTED) {
      if (random.nextBoolean()) {
        job.needs(material, "S", random.nextInt(1, 300), pour);
      }
    }
    for (int i = random.nextInt(4); i > 0; i--) {
      Length length = Length.ofInches(random.nextInt(24, 96));
      job.pieces(Material.FORM_BOARD, "2x6", length, random.nextInt(1, 9), "side " + i, pour);
    }
    double net = random.nextInt(1, 3000) / 100.0;
    job.concrete(pour, "3000 psi", net, net * 1.1);
    if (random.nextBoolean()) {
      job.needs(Material.SAW_CUTTING, "", random.nextInt(10, 200), pour);
      job.extra("drain", "4 in", random.nextInt(1, 4), "each", ExtraKind.SET_IN);
    }
  }

  PriceBook prices() {
    List<Supplier> suppliers = new ArrayList<>();
    List<Price> rows = new ArrayList<>();
    for (int i = random.nextInt(1, 5); i > 0; i--) {
      String name = "supplier " + i;
      suppliers.add(supplier(name));
      for (Material material : COUNTED) {
        if (random.nextInt(4) > 0) {
          rows.add(
              Given.price(material.label(), "S", name, "box", cents(500))
                  .pack(Integer.toString(random.nextInt(1, 60)))
                  .price());
        }
      }
      for (int feet : List.of(8, 12, 16)) {
        if (random.nextBoolean()) {
          rows.add(
              Given.price("form board", "2x6", name, "each", cents(2000))
                  .stock(Length.ofFeet(feet))
                  .price());
        }
      }
      rows.add(Given.price("concrete", "3000 psi", name, "yd3", cents(20000)).price());
      rows.add(Given.price("saw cutting", "", name, "ft", cents(200)).untaxed().price());
    }
    return new PriceBook(rows, suppliers, "USD");
  }

  private Supplier supplier(String name) {
    Seller seller = Seller.named(name).tax(random.nextInt(8) + ".5").shortFlat(4, "33.33");
    if (random.nextInt(3) > 0) {
      seller.delivery(cents(9000));
    }
    if (random.nextBoolean()) {
      seller.freeFrom(cents(100_000));
    }
    if (random.nextInt(3) == 0) {
      seller.minimum(cents(20_000));
    }
    return seller.perLoad(cents(2000)).supplier();
  }

  private String cents(int most) {
    return BigDecimal.valueOf(random.nextInt(1, most), 2).toPlainString();
  }
}
