package longbough.runner.client.page;

import longbough.runner.client.file.Client;
import longbough.runner.client.file.Logo;
import longbough.runner.client.file.Party;
import longbough.runner.report.Capital;
import longbough.runner.report.Page;

/** Letterhead, heading, and who asked whom about which tree. */
final class HeadPart implements Part {

  /** Room for a logo, in points of a screen. */
  private static final double LOGO_HEIGHT = 64;

  private static final double LOGO_WIDTH = 240;

  @Override
  public void write(Page page, ClientInput input) {
    Client client = input.client();
    page.open("header");
    if (client.consultant().named() || client.logo().isPresent()) {
      page.open("div", "class", "letterhead");
      client.logo().ifPresent(logo -> logo(page, input, logo));
      party(page, client.consultant(), "sender");
      page.close();
    }
    page.element("p", input.say("head.kind"), "class", "kind");
    page.element("h1", input.title());
    page.open("p", "class", "lead");
    page.text(Capital.of(input.asked().species().commonName()) + " (");
    page.element("i", input.asked().species().scientificName());
    page.text(client.location().isEmpty() ? ")" : "), " + client.location());
    page.close();
    particulars(page, input);
    page.close();
    if (!client.introduction().isEmpty()) {
      page.element("p", client.introduction(), "class", "own");
    }
  }

  private static void logo(Page page, ClientInput input, Logo logo) {
    double scale = Math.min(LOGO_HEIGHT / logo.height(), LOGO_WIDTH / logo.width());
    page.empty(
        "img",
        "class",
        "logo",
        "src",
        logo.address(),
        "width",
        Long.toString(Math.max(1, Math.round(scale * logo.width()))),
        "height",
        Long.toString(Math.max(1, Math.round(scale * logo.height()))),
        "alt",
        input.say("head.logo", input.client().consultant().name()));
  }

  private static void party(Page page, Party party, String style) {
    page.open("div", "class", style);
    if (!party.name().isEmpty()) {
      page.element("p", party.name(), "class", "name");
    }
    party.lines().forEach(line -> page.element("p", line));
    page.close();
  }

  private static void particulars(Page page, ClientInput input) {
    Client client = input.client();
    if (!client.client().named() && client.date().isEmpty() && client.reference().isEmpty()) {
      return;
    }
    page.open("dl", "class", "particulars");
    if (client.client().named()) {
      page.open("div").element("dt", input.say("head.for")).open("dd");
      page.text(client.client().name());
      client.client().lines().forEach(line -> page.empty("br").text(line));
      page.close().close();
    }
    item(page, input.say("head.date"), client.date());
    item(page, input.say("head.reference"), client.reference());
    page.close();
  }

  private static void item(Page page, String name, String value) {
    if (!value.isEmpty()) {
      page.open("div").element("dt", name).element("dd", value).close();
    }
  }
}
