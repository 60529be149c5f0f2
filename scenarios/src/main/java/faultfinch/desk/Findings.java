package faultfinch.desk;

import faultfinch.board.Pad;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * Turns what is said of a place into the looks and outcomes that are meant. What no fault of the
 * list shows is looked for at other places, or stands for itself if it is a figure.
 */
final class Findings {
  /** So many lines of which one thing is said are a bus. */
  private static final int BUS = 6;

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final Places places;
  private final LookPlaces lookPlaces;
  private final ProbedLater probedLater;

  /**
   * What a phrase is made of.
   *
   * @param text as typed
   * @param said ways of speaking in it
   * @param amount a figure in it
   * @param place where that is
   * @param kinds of looks that can be meant
   * @param whole whether all of the board can be meant
   */
  record Spoken(
      String text,
      List<Said> said,
      Optional<Amounts.Amount> amount,
      Place place,
      Set<String> kinds,
      boolean whole) {}

  Findings(
      Lookbook lookbook,
      Vocabulary vocabulary,
      Places places,
      LookPlaces lookPlaces,
      ProbedLater probedLater) {
    this.probedLater = probedLater;
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    this.places = places;
    this.lookPlaces = lookPlaces;
  }

  /** The looks and outcomes that are meant; nothing where none is. */
  Phrases.Read of(Spoken spoken) {
    String text = spoken.text;
    List<Said> said = spoken.said;
    Optional<Amounts.Amount> amount = spoken.amount;
    Place place = spoken.place;
    Set<String> kinds = spoken.kinds;
    Map<String, List<Said>> byKind = new LinkedHashMap<>();
    Set<String> named =
        said.stream()
            .map(w -> w.meaning().kind())
            .filter(k -> !k.equals(Vocabulary.ANY))
            .collect(LinkedHashSet::new, Set::add, Set::addAll);
    for (Said way : said) {
      String kind = way.meaning().kind();
      if (kind.equals(Vocabulary.ANY)) {
        if (named.size() == 1) {
          named.forEach(k -> byKind.computeIfAbsent(k, x -> new ArrayList<>()).add(way));
        } else if (named.isEmpty()) {
          boolean metered =
              isRail(place)
                  || amount.filter(a -> a.kind().equals("meter")).isPresent()
                  || Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.subjects("meter"))
                      .isPresent();
          String atPins = metered ? "meter" : "probe";
          kinds.stream()
              .filter(k -> !LookPlaces.AT_PINS.contains(k) || k.equals(atPins))
              .limit(1)
              .forEach(k -> byKind.computeIfAbsent(k, x -> new ArrayList<>()).add(way));
        }
      } else {
        byKind.computeIfAbsent(kind, x -> new ArrayList<>()).add(way);
      }
    }
    List<Phrases.Finding> findings = new ArrayList<>();
    Optional<Phrases.Trouble> trouble = Optional.empty();
    boolean dead = byKind.getOrDefault(Phrases.KEY, List.of()).stream().anyMatch(Findings::isDead);
    Optional<Phrases.Finding> unheard = dead ? unheard(text, place) : Optional.empty();
    if (unheard.isPresent()) {
      findings.add(unheard.get());
      byKind.remove(Phrases.KEY);
    }
    boolean heard =
        amount.filter(a -> a.kind().equals("counter")).isPresent() && kinds.contains("listen");
    String measured = heard ? "listen" : amount.map(Amounts.Amount::kind).orElse("");
    for (Map.Entry<String, List<Said>> e : byKind.entrySet()) {
      boolean relative = e.getValue().stream().anyMatch(w -> w.meaning().shows().relative());
      boolean well = e.getValue().stream().allMatch(w -> !w.not() && w.meaning().isHealthy());
      Place where = well ? well(place, e.getKey()) : place;
      BiPredicate<String, String> covers = together(e.getKey(), e.getValue());
      if (e.getKey().equals(measured)) {
        BiPredicate<String, String> both =
            covers.and(figures(amount.orElseThrow(), measured, text, place));
        covers = shown(looks(measured, place, text), both) ? both : covers;
      }
      Phrases.Read one = finding(text, e.getKey(), covers, relative, where, false);
      findings.addAll(one.findings());
      trouble = trouble.or(() -> one.trouble());
    }
    if (spoken.whole
        && byKind.isEmpty()
        && !said.isEmpty()
        && place.isNowhere()
        && unheard.isEmpty()) {
      Phrases.Read one = finding(text, Phrases.SCREEN, all(said), true, place, false);
      findings.addAll(one.findings());
      trouble = trouble.or(() -> one.trouble());
    }
    if (amount.isPresent() && !named.contains(measured)) {
      String kind = measured;
      Phrases.Read one =
          finding(text, kind, figures(amount.get(), kind, text, place), false, place, true);
      findings.addAll(one.findings());
      trouble = trouble.or(() -> one.trouble());
    }
    return new Phrases.Read(findings, trouble);
  }

  /**
   * Outcomes that a figure means. Where no fault of the list shows it, the nearest that are off to
   * the same side: a regulator that is low is so by one figure in the list, by another on a bench.
   */
  private BiPredicate<String, String> figures(
      Amounts.Amount amount, String kind, String text, Place place) {
    boolean rail = kind.equals("meter") && isRail(place);
    BiPredicate<String, String> covers =
        (outcome, healthy) ->
            kind.equals("listen")
                ? amount.isHeardIn(outcome)
                : amount.covers(outcome) || rail && amount.isLeftByAShort(outcome, healthy);
    List<String> looks = looks(kind, place, text);
    if (kind.equals("ohms") && !shown(looks, covers)) {
      // 55 ohms of a rail that should have some hundred are no short.
      double least =
          looks.stream()
              .flatMap(look -> lookbook.outcomes(look).stream())
              .mapToDouble(amount::decades)
              .min()
              .orElse(Double.POSITIVE_INFINITY);
      return (outcome, healthy) -> amount.decades(outcome) == least;
    }
    double nearest =
        looks.stream()
            .map(lookbook::outcomes)
            .flatMap(
                all -> all.stream().filter(outcome -> amount.isOnTheSideOf(outcome, all.get(0))))
            .mapToDouble(amount::distance)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    boolean shown = shown(looks, covers) || Double.isInfinite(nearest);
    return shown
        ? covers
        : (outcome, healthy) ->
            amount.isOnTheSideOf(outcome, healthy) && amount.isAboutAsFar(outcome, nearest);
  }

  private List<String> looks(String kind, Place place, String text) {
    return lookPlaces.of(kind, supplied(kind, place), false, text.toLowerCase(Locale.ROOT)).stream()
        .flatMap(List::stream)
        .toList();
  }

  private boolean shown(List<String> looks, BiPredicate<String, String> covers) {
    return looks.stream()
        .anyMatch(
            look -> {
              List<String> outcomes = lookbook.outcomes(look);
              return outcomes.stream().anyMatch(o -> covers.test(o, outcomes.get(0)));
            });
  }

  boolean isRail(Place place) {
    return !place.lines().isEmpty()
        && place.lines().stream().flatMap(List::stream).allMatch(places::onRail);
  }

  /** A supply that is spoken of as such, and at no part, is what its source gives. */
  private Place supplied(String kind, Place place) {
    boolean alone = place.refs().isEmpty() && place.words().size() <= place.lines().size();
    return LookPlaces.AT_PINS.contains(kind) && alone && isRail(place)
        ? atFirst(place, kind, place.quantity())
        : place;
  }

  /** Lines that are well are so all of them; one look at each tells it. */
  private Place well(Place place, String kind) {
    if (place.lines().isEmpty() || place.quantity() == Place.Quantity.NONE) {
      return place;
    }
    return atFirst(place, kind, Place.Quantity.EVERY);
  }

  private Place atFirst(Place place, String kind, Place.Quantity quantity) {
    List<List<Pad>> lines =
        place.lines().stream().map(line -> lookPlaces.first(kind, line)).toList();
    return new Place(place.refs(), lines, quantity, place.words());
  }

  private static boolean isDead(Said said) {
    return said.meaning().name().equals("nothing") && !said.not();
  }

  /** Keys of which nothing comes, where a set shows what is typed and they belong to it. */
  private Optional<Phrases.Finding> unheard(String text, Place place) {
    if (!lookPlaces.known(Phrases.TYPED) || !lookPlaces.known(Phrases.SCREEN)) {
      return Optional.empty();
    }
    List<String> outcomes = lookbook.outcomes(Phrases.TYPED);
    Comparison.Normal normal =
        new Comparison.Normal(outcomes.get(0), lookbook.outcomes(Phrases.SCREEN).get(0));
    String right = Comparison.echo(outcomes.get(0), normal);
    Set<String> rest = new LinkedHashSet<>(List.of(right.split("")));
    List<Shows> shows = new ArrayList<>();
    for (String ref : place.refs()) {
      String letter = places.letter(ref);
      if (!letter.isEmpty() && right.contains(letter)) {
        shows.add(Shows.unheard(letter));
        rest.remove(letter);
      }
    }
    List<String> dead =
        outcomes.stream().filter(o -> shows.stream().allMatch(s -> s.covers(o, normal))).toList();
    // Who names the dead keys has tried the others.
    List<String> others =
        dead.stream()
            .filter(o -> rest.stream().allMatch(Comparison.echo(o, normal)::contains))
            .toList();
    List<String> meant = others.isEmpty() ? dead : others;
    return shows.isEmpty() || meant.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Phrases.Finding(
                Phrases.TYPED, text, List.of(new Sight(List.of(Phrases.TYPED), meant)), true));
  }

  /**
   * All that was said of one kind of look. Of a set or a sound that nobody shows so it is what most
   * of it fits: "a mess of slanted lines" is a mess, or sloping for want of sync.
   */
  private BiPredicate<String, String> together(String kind, List<Said> said) {
    BiPredicate<String, String> all = all(said);
    if (said.size() < 2
        || !LookPlaces.OWNERS.contains(kind)
        || !lookPlaces.known(kind)
        || shown(List.of(kind), all)) {
      return all;
    }
    // "The chord is flat": what is as usual but for something is called by its name.
    List<Said> odd = said.stream().filter(w -> w.not() || !w.meaning().isHealthy()).toList();
    if (!odd.isEmpty() && odd.size() < said.size()) {
      return together(kind, odd);
    }
    List<String> outcomes = lookbook.outcomes(kind);
    long most = outcomes.stream().mapToLong(o -> fits(said, o, outcomes.get(0))).max().orElse(0);
    return most == 0 ? all : (outcome, healthy) -> fits(said, outcome, healthy) == most;
  }

  private static long fits(List<Said> said, String outcome, String healthy) {
    return said.stream().filter(w -> w.covers(outcome, healthy)).count();
  }

  private static BiPredicate<String, String> all(List<Said> said) {
    return (outcome, healthy) -> said.stream().allMatch(w -> w.covers(outcome, healthy));
  }

  /**
   * One kind of look at a place.
   *
   * @param figure whether a figure was read, which stands for itself if no fault shows it
   */
  private Phrases.Read finding(
      String text,
      String kind,
      BiPredicate<String, String> covers,
      boolean relative,
      Place place,
      boolean figure) {
    String small = text.toLowerCase(Locale.ROOT);
    List<List<String>> looks = lookPlaces.of(kind, supplied(kind, place), relative, small);
    if (looks.isEmpty()) {
      return Phrases.trouble(Statement.Why.NO_PLACE, kind, lookPlaces.near(kind));
    }
    boolean none = place.quantity() == Place.Quantity.NONE;
    boolean every = none || place.quantity() == Place.Quantity.EVERY;
    List<Sight> sights = new ArrayList<>();
    boolean everybody = true;
    for (List<String> line : looks) {
      Set<String> outcomes = new LinkedHashSet<>();
      for (String look : line) {
        List<String> all = lookbook.outcomes(look);
        for (String outcome : all) {
          if (covers.test(outcome, all.get(0)) != none) {
            outcomes.add(outcome);
          } else {
            everybody = false;
          }
        }
      }
      if (!outcomes.isEmpty()) {
        sights.add(probedLater.of(new Sight(line, List.copyOf(outcomes)), small));
      } else if (every) {
        elsewhere(kind, covers, figure && !none, text)
            .ifPresent(o -> sights.add(probedLater.of(new Sight(line, o), small)));
      }
    }
    if (every && sights.size() >= BUS) {
      // A line that rests where a good one does tells nothing of whether it has ever moved.
      List<Sight> telling = sights.stream().filter(probedLater::tells).toList();
      if (2 * telling.size() > sights.size()) {
        sights.retainAll(telling);
      }
    }
    if (sights.isEmpty()) {
      elsewhere(kind, covers, figure, text)
          .ifPresent(
              o -> looks.forEach(line -> sights.add(probedLater.of(new Sight(line, o), small))));
    }
    if (sights.isEmpty()) {
      String look = looks.get(0).get(0);
      return Phrases.trouble(Statement.Why.NOBODY_SHOWS_IT, look, lookbook.examples(look));
    }
    if (everybody) {
      return Phrases.trouble(Statement.Why.EVERYBODY_SHOWS_IT, looks.get(0).get(0), List.of());
    }
    boolean one = looks.size() == 1 && looks.get(0).size() == 1;
    String called = one ? looks.get(0).get(0) : called(kind, place);
    return new Phrases.Read(
        List.of(new Phrases.Finding(called, text, sights, every)), Optional.empty());
  }

  /**
   * What is meant where no fault shows it: outcomes that the same kind of look has at other places,
   * or a figure as it was read. Empty if it can be meant of no such look.
   */
  private Optional<List<String>> elsewhere(
      String kind, BiPredicate<String, String> covers, boolean figure, String text) {
    List<String> known =
        lookbook.looks().stream()
            .filter(l -> l.equals(kind) || l.startsWith(kind + " "))
            .flatMap(
                l ->
                    lookbook.outcomes(l).stream()
                        .filter(o -> covers.test(o, lookbook.outcomes(l).get(0))))
            .distinct()
            .toList();
    return !known.isEmpty()
        ? Optional.of(known)
        : figure ? Optional.of(List.of(text)) : Optional.empty();
  }

  private String called(String kind, Place place) {
    List<String> quantities = new ArrayList<>(vocabulary.words("some"));
    quantities.addAll(vocabulary.words("every"));
    quantities.addAll(vocabulary.words("none"));
    List<String> words = place.words().stream().filter(w -> !quantities.contains(w)).toList();
    return words.isEmpty() ? kind : kind + " " + places.capitals(String.join(" ", words));
  }
}
