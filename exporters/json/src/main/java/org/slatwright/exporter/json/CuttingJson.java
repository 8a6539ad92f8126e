package org.slatwright.exporter.json;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Optional;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CuttingPlan;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.Purchase;
import org.slatwright.api.plan.ShelfSlats;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;

/** What to buy, and how every stock length is cut. Pieces go by the mark of their part. */
final class CuttingJson {

  private final JsonWriter json;

  CuttingJson(JsonWriter json) {
    this.json = json;
  }

  /** Between its braces. */
  void cutting(CuttingPlan cutting) throws IOException {
    json.objects("timbers", cutting.timbers(), this::timber);
    json.objects("shelves", cutting.shelves(), this::shelf);
    json.objects("spares", cutting.spares(), this::spare);
    json.objects("buying", cutting.buying(), this::purchase);
    money("cost", cutting.cost());
    json.whole("volumeCubicMillimetres", cutting.volume().cubicMillimetres());
  }

  private void timber(TimberCuts timber) throws IOException {
    json.name("stock", timber.stock());
    json.text("timber", timber.timber());
    json.length("kerf", timber.kerf());
    json.length("endTrim", timber.endTrim());
    json.objects("boards", timber.boards(), this::board);
    json.objects("settings", timber.settings(), this::setting);
    json.text("quality", timber.quality());
    json.objects("missing", timber.missing(), this::missing);
  }

  private void board(CutBoard board) throws IOException {
    json.texts("marks", board.marks());
    json.name("source", board.source());
    json.length("length", board.length());
    json.length("width", board.width());
    json.length("thickness", board.thickness());
    money("price", board.price());
    json.objects("cuts", board.cuts(), this::cut);
    json.objects("avoid", board.avoid(), this::stretch);
    json.objects("offcuts", board.offcuts(), this::offcut);
  }

  private void cut(CutBoard.Cut cut) throws IOException {
    json.text("mark", cut.mark());
    json.flag("spare", cut.spare());
    json.length("from", cut.from());
    json.length("length", cut.length());
    json.length("across", cut.across());
    json.length("width", cut.width());
  }

  private void stretch(CutBoard.Stretch stretch) throws IOException {
    json.length("from", stretch.from());
    json.length("to", stretch.to());
  }

  private void offcut(CutBoard.Offcut offcut) throws IOException {
    json.length("from", offcut.from());
    json.length("length", offcut.length());
    json.length("across", offcut.across());
    json.length("width", offcut.width());
    json.flag("keep", offcut.keep());
    json.text("gives", offcut.gives());
  }

  private void setting(StopSetting setting) throws IOException {
    json.length("length", setting.length());
    json.objects("works", setting.works(), this::work);
  }

  private void work(StopSetting.Work work) throws IOException {
    json.text("board", work.board());
    json.text("piece", work.piece());
    json.whole("count", work.count());
  }

  private void missing(MissingPieces pieces) throws IOException {
    json.text("mark", pieces.mark());
    json.whole("count", pieces.count());
    json.length("length", pieces.length());
    json.length("width", pieces.width());
    json.length("thickness", pieces.thickness());
  }

  private void shelf(ShelfSlats shelf) throws IOException {
    json.whole("shelf", shelf.shelf());
    json.whole("run", shelf.run());
    json.texts("marks", shelf.marks());
    json.length("gap", shelf.gap());
    json.flag("filled", shelf.filled());
  }

  private void spare(SparePiece spare) throws IOException {
    json.text("mark", spare.mark());
    json.text("name", spare.name());
    json.text("use", spare.use());
    json.name("stock", spare.stock());
    json.length("length", spare.length());
    json.whole("wanted", spare.wanted());
    json.whole("fromOffcuts", spare.fromOffcuts());
  }

  private void purchase(Purchase purchase) throws IOException {
    json.text("what", purchase.what());
    if (purchase.quantity().isPresent()) {
      json.whole("quantity", purchase.quantity().get());
    }
    if (purchase.length().isPresent()) {
      json.length("length", purchase.length().get());
    }
    money("price", purchase.price());
    money("cost", purchase.cost());
    json.text("note", purchase.note());
  }

  private void money(String key, Optional<BigDecimal> amount) throws IOException {
    if (amount.isPresent()) {
      json.decimal(key, amount.get());
    }
  }
}
