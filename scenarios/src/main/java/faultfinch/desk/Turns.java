package faultfinch.desk;

import java.util.List;
import java.util.regex.Pattern;

/** Turns of speech, and how the same is said plainly; each is tried once, in this order. */
final class Turns {
  private static final String VOLTS = "5 ?v(?:olts?)?";
  private static final String PART = "(?:the )?(?-i:([A-Z]+\\d+))";

  /** A regulator, and volts without a unit behind what its side may be called. */
  private static final String REGULATOR = "\\b(?-i:(VR\\d+))";

  private static final String NO_UNIT =
      "(?: is| stays(?: at)?| at| gives| reads| only|:)* (\\d{1,2}[.,]\\d{1,2})(?= |$|,)"
          + "(?! ?(?:m?v|volts?|m?a|k?ohms?)\\b)";

  /** Volts of a rail of 5 or 12 that is as it should be. */
  private static final String RAIL =
      "(?:4[.,][89]\\d?|5(?:[.,][012]\\d?)?|11[.,][5-9]\\d?|12(?:[.,][0-6]\\d?)?)";

  private static final String FELT =
      "(?<= |^)((?-i:[A-Z]+\\d+)|one (?:of the )?(?:rams?|memory|memories|chips?|ics?)(?: chips?)?)"
          + "(?: is| are| feels?| gets?| runs?)?(?: clearly| much| far| noticeably| a bit)? ";

  private static final String THAN =
      " than (?:(?-i:[A-Z]+\\d+)|(?:the |its |any |all )*(?:others?|rest|neighbours?)(?: [a-z]+)?)(?= |$)";

  private static final String BY =
      "\\b(?:(?:about |some |roughly )?(?:an? (?:quarter|half|third) of an amp|half an amp|\\d+(?:\\.\\d+)? ?(?:m?a|amps?|m?v|volts?)))";

  private static final String NORMAL =
      "(?:normal|usual|the usual|what is usual|what is normal|the good (?:one|board)|what it should be|it should be|my good one)";

  private static final String COLOUR =
      "(?:red|green|yellow|blue|magenta|purple|pink|cyan|turquoise|white)";

  /** Something said, in small letters or large, and what is put in its place. */
  private record Turn(Pattern said, String plain) {
    Turn(String said, String plain) {
      this(Pattern.compile("(?i)" + said), plain);
    }
  }

  private static final List<Turn> ALL =
      List.of(
          new Turn(
              "^(?:and |but )?(?:i )?(?:plugged|put|fitted|stuck) (?:in )?(?:the |a |my )?bench rom\\b.*\\b(?:wakes up|woke up|comes to life|came to life|runs|ran|starts|started|works|gets on|got on|gets going|does its tests)\\b.*$",
              "bench ROM runs"),
          new Turn(",? and there it stays\\b", ""),
          // What was done to it, and changed nothing.
          new Turn(
              "\\b(?:warming|cooling|heating|freezing|hot air|cold spray|freezer spray)(?: (?:or|and) (?:warming|cooling|heating|hot air|cold spray))? (?:changes|makes|does|made|did) (?:nothing|no difference|no change)\\b",
              ""),
          new Turn("\\b(?:no )?hold (?:knob|control)\\b.*$", ""),
          new Turn("\\bis the same within \\d+ ?m?v(?:olts?)?\\b", ""),
          new Turn("^a thumb on\\b.*$", ""),
          // So far below that it is no 5 V any more.
          new Turn(
              "\\b(?:well|far|way|clearly) (?:below|under) 5 ?v(?:olts?)?(?= |$|,)", "under 4.7 V"),
          new Turn(
              "\\b(?:well|far|way|clearly) (?:below|under) 12 ?v(?:olts?)?(?= |$|,)", "under 11 V"),
          new Turn(
              ",? ?\\bin (?:the )?even columns and (?:in )?(?:the )?odd(?: ones| columns)?(?: alike)?\\b",
              ""),
          new Turn(
              "\\balways go(?:es)? (?:low|high) (?=(?:at|in|on) (?:the same|once|one))", "pulses "),
          new Turn("(?-i:(?<= |^)([A-Z0-9])) up to (?-i:([A-Z0-9])(?= |,|$))", "$1 to $2"),
          new Turn("\\b(?:is|was|are|were) not (?:an? )?short(?:ed)?\\b", "no short"),
          new Turn("\\bends (?:up )?in the meg-?ohms\\b", "over 100 k"),
          new Turn(
              "^(?:the one|that|those|it) in ['\"]\\w+['\"] (?:has|have) (?:it|one|this).*$", ""),
          // The contacts of a socket are no legs of the chip.
          new Turn(
              "\\b(?:supply |volts? )?on (?:the )?socket (?:(?-i:[A-Z]+\\d+) )?(?:pin|contact) \\w+:? (?:is )?\\d.*$",
              ""),
          new Turn("\\b12 ?v(?:olts?)? and (?=(?-i:\\d+V[A-Z])\\b)", ""),
          new Turn("^one of my (?:monitors|sets|tvs|screens)\\b.*$", ""),
          new Turn(
              "\\b(no shorts? to (?:ground|gnd|earth))(?:,| or| and| nor)* (?:to )?(?:the )?(?:\\+?\\d+ ?v(?:olts?)?|supply|rail)(?= |$|,)",
              "$1"),
          // A resistor to a rail by its ohms, which is no reading of the rail.
          new Turn(
              "^.*\\b\\d+k\\d? to \\d+ ?v(?:olts?)? (?:is )?(?:intact|ok|fine|good|there)\\b.*$",
              ""),
          // Seen in games, which are no drill.
          new Turn("^(?:and |but )?in (?:some |a |the |most )?games?\\b.*$", ""),
          // Keys with a stick pushed are no drill either.
          new Turn(
              "^.*\\b(?:while|with|when) (?:joystick |stick )?(?:\\d )?(?:is )?(?:held |pushed )?(?:left|right|up|down|fire)\\b.*\\b(?:held|pressed|along|instead)\\b.*$",
              ""),
          // A current through one part is not what the board takes.
          new Turn(
              "\\b(?:about |some |around )?\\d+(?:\\.\\d+)? ?ma (?:goes|flows|runs|passes|flow|go|run) through\\b.*$",
              ""),
          // A figure of a counter or tuner is no text on the set.
          new Turn(
              "\\b(?:my |the |a )?(?:tuner|frequency counter|counter) (?:says|shows|reads|gives|displays) (?=\\d)",
              ""),
          // No byte was another.
          new Turn(
              "\\b(?:all )?0+(?: (?:out )?of \\d{1,3})? differ(?:s|ing|ent|ences?)?\\b|\\ball 000\\b|\\b000 everywhere\\b",
              "no error"),
          new Turn(
              "\\b(?:screen |picture |display |set |monitor )?(?:is |stays )?(?:all )?(?:black|dark|blank|empty) (?:except|but|apart|save|bar)(?: for| from)? (?:the |a )?(?:blinking |flashing |steady )?cursor\\b",
              "cursor alone"),
          // What beeps there is a meter.
          new Turn(
              "^(?:and )?(?:the )?track (?:between|from|to)\\b.* (?:buzzes|beeps|rings)(?: through| out| fine| ok)*$",
              ""),
          new Turn("^(?:and )?to (?:ground|gnd|earth) it beeps\\b", "short to ground"),
          new Turn(
              "^(?!.*\\b(?:between|from)\\b).*\\b(?:the |my )?meter (?:still )?(?:beeps|buzzes)\\b.*$",
              ""),
          new Turn("^.*\\brelays?\\b.*\\bclicks?\\b.*$", ""),
          new Turn("\\bnothing (?:that looks|looking) like an? (?:dead )?short\\b", "no short"),
          new Turn("\\bnothing (?:is )?shorted (?=(?:on|at)\\b)", "no short "),
          new Turn("\\bcold or after (?:an?|some|several|\\d+) (?:hours?|minutes?|while)\\b", ""),
          // "BO pin 19 is flat" is of no tone.
          new Turn(
              "((?-i:\\b[A-Z]+\\d*/?) pin \\d+) (?:is|stays) flat\\b(?! (?:low|high))",
              "$1 does not move"),
          // What a lamp of the keyboard does is not what the drive's does.
          new Turn("^.*\\bcaps(?:[- ]?lock)? (?:lamp|led|light)\\b.*$", ""),
          // Seen elsewhere, and so no look at this board.
          new Turn(
              "^(?:the )?(?:monitor|tv|set|screen|display|recorder|cable|lead)(?: and (?:the )?(?:monitor|cable|lead|plug))?"
                  + "(?: (?:is|are|was|were|works?|worked|tested|checked|proved|runs?|good|fine|ok|okay|well))*,?"
                  + " (?:with|on|at|in|from) (?:another|a different|my other|the other|a second|a good|my own|the neighbour's) (?:computer|machine|board|one|set)\\b.*$",
              ""),
          // A drive that is good by itself, or somewhere else, is no list of its files.
          new Turn(
              "^(?:the )?(?:disc |disk )?drive(?: and (?:the |its )?(?:cable|lead))? "
                  + "(?=itself\\b|(?:(?:is|was|works?|worked|tested|runs|good|fine|ok|okay) )+(?:on|in|at|with) (?:another|the other|a different|my other|the neighbour's) (?:machine|computer|board)\\b)",
              "disc drive "),
          // A connector by what goes into it.
          new Turn(
              "(?<=\\b(?:pin|leg) \\d{1,2} (?:of|on|at) the )(?:disc |disk )?drive (?:connector|socket|plug|port)\\b",
              "disc drive"),
          new Turn(
              "(?<=\\b(?:pin|leg) \\d{1,2} (?:of|on|at) the )(monitor|side port|expansion) (?:connector|socket|plug)\\b",
              "$1"),
          // Warm and cold alike is no finger on anything.
          new Turn(
              "\\b(?:whether |both )?(?:when |in the |if )?(?:cold (?:and|or|as well as) (?:warm|hot)|(?:warm|hot) (?:and|or|as well as) cold)\\b",
              ""),
          // What lies between two pins is on neither.
          new Turn("^.*\\b(?:difference|drop) (?:between|across|over)\\b.*$", ""),
          // "VR2 out far too low" is no part that is out.
          new Turn(
              "(?-i:\\b(VR\\d+)) out(?= (?:is |at |reads |gives |only |just |far |much |way |very |well )*(?:too |low|high|\\d|nothing|zero|dead|under|below|about))",
              "$1 output"),
          new Turn(
              "(?-i:\\b(VR\\d+)) (?:puts out|gives|delivers|produces|supplies|makes)(?: out)? (?:nothing|no volts?|no voltage|zero)(?: volts?| at all)*(?= |$|,)",
              "$1 output 0 V"),
          new Turn(
              "\\b(?:on|at) (?:the )?(in|out)put (?:legs?|pins?|sides?) of (?-i:(VR\\d+)) and (?-i:(VR\\d+)):? (?:(?:i|we) (?:measure|get|find|read|see) |there is )?(?:nothing|no volts?|zero)(?: volts?)?(?= |$|,)",
              "$2 $1put 0 V and $3 $1put 0 V"),
          // A rail by its name, and what it reads at a part: "5 V at U1 measures under 4.75 V".
          new Turn(
              "\\b(?:5|12) ?v(?:olts?)? (at|on) ([^,;]{2,30}?) (?:measures?|is|reads|comes to|sits at|stands at)(?: only| just| well| far| clearly| a bit| about| around)* (?=(?:under |below |less than |over |above )?\\d+(?:\\.\\d+)? ?v\\b)",
              "rail $1 $2 is "),
          new Turn("\\b(?:an?|one) v(?:olt)? or (?:so|two|thereabouts)\\b", "1 V"),
          new Turn(
              "^(?:it )?(?:came|comes|was sent|sent|was brought|brought) in (?:as |with )", ""),
          new Turn(
              "\\bnot even (?:the |a )?((?:drive )?(?:lamp|led|light))(?: for an instant| for a moment| for a second| once| briefly)?(?: (?:when|at|after) [^,;]*)?(?=$|,)",
              "$1 dark"),
          // Who writes what stands there while it starts calls it by many names.
          new Turn(
              "\\b(?:start(?:-? ?up)?|welcome|opening|sign-on|boot|usual|greeting) (?:message|text|greeting|words|lines?)\\b",
              "banner"),
          new Turn(
              "\\b(?:nothing (?:i|you|one) types? (?:appears|shows(?: up)?|comes up|is seen)|(?:what|whatever|anything) (?:i|you|one) types? (?:does not|doesn't|never|will not|won't) (?:show(?: up)?|appears?|come up|come out|shows)|no letters? (?:come|comes|appear|appears|shows?)(?: up| when (?:i|you) type)?)\\b",
              "typed letters do not appear"),
          new Turn("\\b(?:screen|picture|set|monitor) syncs\\b", "picture in sync"),
          new Turn("\\bsyncs? (?:good|fine|ok|right|there)\\b", "picture in sync"),
          new Turn("\\b(?:without|with no) (?:any )?effect\\b", "have no effect"),
          new Turn(
              "^none of the (?:[a-z]+ )?(outputs|inputs|pins|lines|selects) (of|at|on) ((?-i:[A-Z]+\\d+)) (?:does anything|do anything|moves?|pulses?|is active|are active|is alive|shows? anything|toggles?)\\b",
              "all $1 $2 $3 are still"),
          new Turn(
              "\\bno (?:(?:column|dot|pixel|character|shift|master|system|bus|cpu|picture) )?clock (?=(?:at|on|reaching|arriving at) (?:the )?(?-i:[A-Z]+\\d+)(?: pin |\\.))",
              "no pulses "),
          new Turn(
              "((?-i:[A-Z]+\\d+)(?: pin |\\.)\\w+/?):? (?:has |shows |reads )?nothing (?:worth mentioning|to speak of|to write home about)\\b",
              "$1 0 V"),
          new Turn(
              "\\b(memory|rams?|stations?|ports?) without (?:a |any )?(?:complaints?|errors?)\\b",
              "$1 ok"),
          new Turn("^no v(?:olts?|oltage)? (?:at|on) (?=(?:the )?(?:pin|leg) \\d)", "0 V at "),
          new Turn(
              "^(?:the )?5 ?v(?:olts?)? (?:of|on) the (address|picture) side (?:is |was |gets |are )?(?:pulled |dragged |held )?(?:right |all the way |well )?down\\b",
              "rail of the $1 side low"),
          new Turn(
              "\\b(show|shows|have|has|with|at) (?:ugly |nasty |funny |strange |odd |typical )*half[- ]?levels?\\b(?: on the scope)?",
              "$1 a half level"),
          new Turn("\\bgreen(?:ish)?[- ]blue\\b|\\bblue[- ]green\\b|\\bgreenish blue\\b", "cyan"),
          // "5 V is 5.02", "supply is 5.1 V", "5 V rail: 4.9": the rail by its name, then what it
          // reads.
          new Turn(
              "(?<= |^)(?<!(?:9|12) ?v )(?<!(?:9|12) volts? )(?<!power )(?:the )?(?:\\+?"
                  + VOLTS
                  + "(?: rail| line| supply)?|(?:5 v )?supply)"
                  + "(?: is| measures| measured| reads| at|:| =)?(?: only| just| really| down to| at)*"
                  + " (?:about |around )?(\\d[.,]\\d{1,2})(?: v(?:olts?)?)?(?! ?[km]?ohm)(?= |$|,)",
              "rail is $1 V"),
          new Turn(supply("12"), "12 v rail $1 V"),
          new Turn(supply("9"), "9 v supply $1 V"),
          // What sounds is no level, and heard by nobody at a pin.
          new Turn(
              "((?-i:[A-Z]+\\d+)(?: pin |\\.)\\w+/?),? (?:i |we |one )?(?:can )?(?:see|find|get|have|carries|shows|has|gives|there is) (?:the |a )?(?:start-up |power-up |full |whole |opening )?(?:chord|tune|tones?|notes?|audio|music)\\b.*$",
              ""),
          new Turn(
              "^(?:the )?(?:start-up |power-up |full |whole |opening )?(?:chord|tune|audio|music) (?:is |can be )?(?:there|present|seen|visible|fine|clear) (?:at|on) ((?-i:[A-Z]+\\d+)(?: pin |\\.)\\w+/?).*$",
              ""),
          // Neither high nor quite low.
          new Turn(
              "\\bnever (?:gets?|comes?|goes|rises?|reaches)(?: up)?(?: to)? an? (?:proper|good|full|real|valid|solid|clean|decent) high\\b",
              "never fully high"),
          new Turn(
              "\\bnever (?:gets?|comes?|goes|falls?|reaches)(?: down)?(?: to)? an? (?:proper|good|full|real|valid|solid|clean|decent) low\\b",
              "never fully low"),
          new Turn(
              "\\b(?:has|have|shows?) no (?:valid|proper|clean|real|good|logic) level\\b",
              "undriven"),
          // "is not answering to 'files'".
          new Turn(
              "\\b(?:disc |disk )?drive (?:is not|isn't|was not|wasn't|not) (?:answering|responding|reacting|replying)(?: to (?:the )?(?:command|['\"]?files['\"]?))?(?= |$|,|;)",
              "drive did not answer"),
          new Turn(
              "\\bno memory error (?:tone|beeps?|sound|alarm)s?(?: follows?| comes?| is heard)?\\b",
              ""),
          new Turn("\\bmemory error (?=(?:tone|beeps?|sound|alarm)s?\\b)", "low "),
          // For moments, again and again.
          new Turn(
              "\\b(?:dips?|goes|drops|is pulled|gets pulled|falls) (?:low|down) for (?:some|a few|several|about \\d+|\\d+) (?:micro|milli|nano)?(?:seconds?|secs?)\\b",
              "pulses"),
          // Both levels, in turn.
          new Turn("\\bgo(?:es|ing)? (?:low and high|high and low)\\b", "toggles"),
          new Turn(
              "\\b(?:has|have|shows?|shows? only|are at|is at|at|with) (?:an? )?(?:in-between|half|middle|intermediate|in between) (?:levels?|voltages?)\\b",
              "in between"),
          // What runs unasked is no reading of a tape.
          new Turn(
              "\\b(?:tape |cassette )?(?:recorder|motor) (?:runs off|starts|runs|turns)(?: as soon as .*| at once.*| by itself.*| all the time.*| unasked.*)$",
              ""),
          new Turn(
              "\\b(?:says|said|reports?|tells me|claims|complains)(?: that)? the (?:disc |disk )?drive (?:kept quiet|keeps quiet|stays quiet|is silent|stays silent|is not there|is mute|gave no answer|gives no answer|did not reply|does not reply|never answered)\\b",
              "drive did not answer"),
          new Turn(
              "\\b(?:drive )(?:will not|would not|won't|does not|doesn't|cannot|can't) (?:list|read|load)(?: its| the| any)? (?:files?|disc|disk|directory|list)\\b",
              "drive did not answer"),
          // Of a voltage in words.
          new Turn(
              "\\b(?:one and a half|one and half|1 and a half|one-and-a-half) v(?:olts?)?\\b",
              "1.5 V"),
          new Turn("\\b(?:two and a half|2 and a half|two-and-a-half) v(?:olts?)?\\b", "2.5 V"),
          new Turn("\\b(?:half an?|half-an?) v(?:olt)?\\b", "0.5 V"),
          new Turn("\\b(?:maybe |perhaps )(?:an? |one )v(?:olt)?\\b", "1 V"),
          new Turn(
              "\\b(ohms|ohmmeter|resistance)\\b(.{1,60}?)(?: is|:| reads)?,? (?:practically |virtually |almost |nearly |next to )?(?:zero|nothing|nil|a dead short)(?: ohms?)?(?= |$|,)",
              "$1$2 0 ohms"),
          // "5 V at the processor: nothing".
          new Turn(
              "(?<=^|[,;] )(\\d+ ?V) (at|on) ([^,:;]{2,30}?):? (?:nothing|none|nil|missing|gone|not there)(?=$|[,.])",
              "no $1 $2 $3"),
          new Turn(
              "\\breads? (?:next to|almost|nearly) nothing(?: v(?:olts?)?)?(?=$|[,.;])",
              "reads under 1 V"),
          new Turn(
              "\\b(?:practically|virtually|next to|almost|nearly) (?:zero|nothing|nil)(?: v(?:olts?)?)?(?= |$|,)(?! (?:on (?!(?:the )?(?:pin|leg|(?-i:[A-Z]+\\d)))|ohms?))",
              "0 V"),
          // A rail by what it feeds: "from the 5 V of the memories to ground".
          new Turn(
              "\\b(\\d+ ?V) (?:of|at|on) (?:the |all )?[a-z]+ (?=(?:to|and) (?:ground|gnd|earth|0 ?V)\\b)",
              "$1 rail "),
          new Turn(
              "\\bROM (\\d) is (?:always |permanently |constantly )?selected (?:for good|all the time|for ever|the whole time|always|permanently|constantly)\\b",
              "select of ROM $1 low"),
          // Something in every place of the text area.
          new Turn(
              "\\b(?:thin |narrow |fine )?(?:vertical |upright )?(line|stripe|bar) (?:down|in|through|across|at) (?:the )?(?:middle|centre|left|right|edge|side) of (?:every|each) character(?: place| cell| position)?\\b",
              "$1 in every character"),
          new Turn(
              "\\b(?:everything|all)(?: is| works| seems)? (?:normal|fine|ok|well|good|perfect) (?:until|till|up to when) (?:I|you|he|she|they|one) (?:asks?|types?|wants?|calls?|enters?)(?: for)? (?:the )?files?\\b",
              "starts up fine"),
          // How far a pitch is off, in the words of music.
          new Turn(
              "\\b(?:(?:about |nearly |almost )?an? )?(?:whole |half |full )?(?:semi)?tones? (?:flat(?:ter)?|lower|deeper|down)\\b.*$",
              "pitch too low"),
          new Turn(
              "\\b(?:(?:about |nearly |almost )?an? )?(?:whole |half |full )?(?:semi)?tones? (?:sharp(?:er)?|higher|up)\\b.*$",
              "pitch too high"),
          new Turn(
              "\\b(chord|tones?|beeps?|pitch|notes?)( is| are| was| sounds?| comes?| plays?)? (?:a bit |a little |much |clearly |slightly |all )?(?:lower|flatter|deeper) than (?:usual|normal|it should be|before)\\b",
              "$1 too low"),
          new Turn(
              "\\b(chord|tones?|beeps?|pitch|notes?)( is| are| was| sounds?| comes?| plays?)? (?:a bit |a little |much |clearly |slightly |all )?(?:higher|sharper) than (?:usual|normal|it should be|before)\\b",
              "$1 too high"),
          // What has come of it.
          new Turn(
              "^(?:now|today|suddenly|meanwhile|by now) (?=(?:black|blank|dark|dead|silent|mute|white|garbage|nothing)\\b)",
              ""),
          // A counter that counts moves every output.
          new Turn(
              "^(?:the )?((?-i:[A-Z]+\\d+)|(?:[a-z-]+ )?counter(?: chip)?) (?:counts|is counting|does count|counts away|counts along)(?: nicely| fine| properly| well)?$",
              "all outputs of $1 pulse"),
          // Lines that are alike wherever they go are as they should be.
          new Turn(
              "\\blooks? (?:just |exactly |much |all )?(?:the same|identical|alike) (?=(?:on|at) (?:all|each|every|both)\\b)",
              "are fine "),
          // For how long, or against what odds, and not what: "low even with pin 9 low".
          new Turn(
              "(?<=\\b(?:low|high|dead|still|stuck|quiet|\\d v|volts?)) (?:for as long as|even with|even when|even while|even if|even though|whatever|whichever|no matter what|no matter how|regardless of) .*$",
              ""),
          // The light of a probe for pulses.
          new Turn(
              "\\b(?:the )?(?:pulse )?(?:led|light|lamp) (?:of|on) (?:the |my )?(?:logic )?probe (?:never|does not|doesn't|did not|didn't) (?:fires?|lights?(?: up)?|comes? on|flash(?:es)?|blinks?|winks?)(?: there)?\\b",
              "no pulses"),
          // A message that can be read is not a picture that is right.
          new Turn(
              "\\b(?:the )?message(?: on (?:the )?screen)?(?: is)? (?:perfectly |quite |clearly |easily |well )?(?:legible|readable)(?: for once)?\\b,?",
              ""),
          // "the keyboard's stone dead".
          new Turn(
              "(?<=[a-z])'s (?=(?:completely |totally |stone |quite |all |also |still |just )?(?:dead|mute|silent|fine|ok|okay|gone|hot|warm|cold|dark|blank|black|stuck|open|missing|normal|good|wrong|high|low)\\b)",
              " is "),
          new Turn(
              "\\b(?:black|dark) (?:text|letters|lettering|characters|writing|print) on (?:a )?(?:white|cream|bright|light|lit)(?: ground| background| paper| screen)?\\b",
              "everything is inverted"),
          // Both levels, one after the other.
          new Turn(
              "\\b(?:goes|is|starts|pulled) (low|high),? (?:and )?then (?:(?:goes|comes|is|back) )*(?!\\1)(?:low|high|up|down)\\b(?: again)?(?: (?:with)?in (?:a|an|no) [a-z]+| after a [a-z]+)?",
              "is pulsing"),
          new Turn(
              "\\b(?:every|each|all(?: the)?) (?:blank|space)s? (?:(?:is|are|gets?|being) )?(?:replaced by|shown as|turned into|comes? out as|turns? into) (?:an? )?([a-z]+?)s?(?= |,|$)",
              "blanks are shown as $1s"),
          new Turn(
              "(?<![a-z])((?-i:[A-Z])) (?:types|gives|prints) (?:a |only a )?(?:blank|space)(?= |,|$)",
              "$1 prints nothing"),
          new Turn("\\bgame (?=paddle)", ""),
          new Turn(
              "\\b((?:paddle|joystick|stick)(?: \\d)?) (?:is|are) (?:useless|no use|good for nothing)\\b",
              "$1 does nothing"),
          // What else is black is no dark screen: "a black box behind", "a little black cursor".
          new Turn(
              "\\bblack (?=(?:little |small |thin |thick |narrow |wide |vertical |horizontal )*"
                  + "(?:box|boxes|bars?|cursor|letters?|text|lines?|stripes?|squares?|blocks?|dots?"
                  + "|spots?|bands?|columns?|characters?|edges?|borders?|holes?|gaps?|slits?"
                  + "|rectangles?)\\b)",
              ""),
          new Turn(
              "\\b(?:everything|all|all text|text)(?: is| in)? white on black\\b", "all in white"),
          new Turn("\\beverything(?: is| comes| was)? in (?=white\\b)", "all text "),
          // "the picture-side '257".
          new Turn("(?<![\\w'])'(?=\\d{2,3}\\b(?!'))", "LS"),
          new Turn("(?-i:\\b([A-Z]{1,3}\\d+))'s (?=[a-z])", "$1 "),
          new Turn(
              "\\bcontinuity (.{3,50}?) (?:is )?(?:missing|none|not there|absent|lost)\\b",
              "no continuity $1"),
          // No chip is meant.
          new Turn("\\bchip[- ](?:enable|select)(?=s?\\b)", "select"),
          // Ohms as people say them who have an eye on the decade.
          new Turn(
              "\\b(?:(?:only |just )?(?:a few|some|several|a couple of|a good few) hundred|hundreds of) ?ohms? (?:or more|and (?:more|rising|climbing|up))\\b(?: and (?:rising|climbing))?",
              "over 100 ohms"),
          new Turn(
              "\\b(?:(?:only |just )?(?:a few|some|several|a couple of|a good few) hundred|hundreds of) ?ohms?\\b",
              "100 to 999 ohms"),
          new Turn(
              "\\b(?:(?:only |just )?(?:a few|some|several|a couple of|a good few) (?:thousand ohms?|kilo-?ohms?|kilohms?|kohms?|k)|thousands of ohms)(?= |$|,)",
              "1 to 9.9 kohms"),
          new Turn("\\b(?:a few |some )?tens of ohms\\b", "10 to 99 ohms"),
          new Turn(
              "\\b(?:a few |some )?tens of (?:k|kilo-?ohms?|kilohms?|kohms?)(?= |$|,)",
              "10 to 99 kohms"),
          // A chip that was taken out, and what came of it.
          new Turn(
              "\\b(?:pulling|removing|unplugging|taking out|lifting out) (?-i:([A-Z]+\\d+))(?: out)? (?:makes|lets|gets|got|made|let) (?:it|the board|the machine)(?: to)? (boot|start|work|run)\\b",
              "with $1 out it $2s"),
          new Turn(
              "\\b(?:voltages?|supply|supplies|power|rails?) (?:(?:is|are|all) )*(?:ok|okay|fine|good|right)[:,]? (?:at |is )?(?:5(?:[.,][012]\\d?)?|4[.,]9\\d?) ?v(?:olts?)?(?= |$|,)",
              "rails fine"),
          new Turn("^since then nothing$", "dead"),
          new Turn(
              "\\bhalf (?:of )?(?:the|its|a) (?:tune|melody|music|notes|tones) (?:is |are )?(?:missing|gone)\\b",
              "one note missing"),
          // What was looked for is not what was found.
          new Turn(
              "^(?:traced|checked|tested|looked at|searched|measured|probed) [^,;:]* for (?:an? )?(?:shorts?|breaks?|opens?|bridges?)$",
              ""),
          new Turn(
              "\\b(?:rings?|buzz(?:es)?|beeps?) (?:out|through)(?: fine| ok| good)?(?: at \\d(?:\\.\\d+)? ?ohms?)?(?= |$|,)",
              "conducts"),
          // Nothing is shorted that is brief, and nothing dark that is drawn so.
          new Turn(
              "\\bshort (?=(?:pulses?|notches|spikes?|lows|highs|blips?|bursts?|beeps?|while|moment|time|peaks?|dips?)\\b)",
              "brief "),
          new Turn(
              "\\b(?:light|bright|white|lit) (?:area |screen |ground |background )?with dark (?:letters?|text|characters?)\\b",
              "inverse"),
          new Turn("\\bdark (?=(?:letters?|text|characters?|signs?|words?|spots?|dots?)\\b)", ""),
          // A supply by its volts that is there, and where.
          new Turn(
              "(?<=\\d v) (?:is |are )?(?:there|present|ok|okay|good|fine) (?=(?:at|on) )", " "),
          new Turn("\\bthere (?:is|was) (?=no\\b)", ""),
          new Turn(
              "\\b(?:ahead of|before|in front of) (?:the |both )*regulators?\\b",
              "regulator inputs"),
          // What is empty is no dark set.
          new Turn(
              "^(?:and |but )?(?:the )?(?:blank|empty) (?:cells?|places?|spaces?|positions?|areas?) .*$",
              ""),
          new Turn(
              "\\bblank (?=(?:cells?|places?|spaces?|spots?|positions?|lines?|areas?|rows?|parts?|columns?)\\b)",
              "empty "),
          // "only counts 160 pages".
          new Turn(
              "\\b(?:only|just) (?:counts?|finds?|shows?|reports?|sees?|passes) (?:[1-9]?\\d|1\\d\\d|2[0-4]\\d|25[0-5])(?: pages)?(?: passed)?(?= |$|,)",
              "fewer pages"),
          new Turn(
              "\\b(?:counts?|finds?|shows?|reports?|sees?|says) (?:only |just )?(?:[1-9]?\\d|1\\d\\d|2[0-4]\\d|25[0-5]) pages(?: passed)?(?= |$|,)",
              "fewer pages"),
          // Amperes, and no commands.
          new Turn(
              "(?<!\\b(?:keyboard|keys) )\\b(?:takes|pulls) (?=(?:about |only |just |nearly |over |around |some |far |almost |way )*(?:too (?:much|little)|nothing|hardly any(?:thing)?|(?:very |next to )(?:little|nothing)|a lot|\\d+(?:\\.\\d+)? ?m?a(?:mps?)?\\b))",
              "draws "),
          new Turn("(?<=\\b(?:pin|leg|pad) \\d{1,2}) a (?=[a-z])", " is "),
          new Turn(
              ",? ?\\bwith (?:no|none of the) (?:keys?|switch|switches) (?:touched|pressed|down|held|pushed)\\b",
              ""),
          new Turn("\\breset (?:timing )?(capacitor|resistor)\\b", "reset time $1"),
          new Turn("\\breset (?:timing )?cap\\b", "reset time capacitor"),
          new Turn(
              "\\b(?:all )?(?:10|ten) (?:stations(?: all)?|times) (?:zeros?|0|fine|ok|good|clean|well)\\b",
              "all stations ok"),
          new Turn("\\ball stations (?:zeros?|0)(?= |,|;|$)", "all stations ok"),
          // Each rail by its volts, in one row: "5.01/4.99/12.1".
          new Turn(
              "(?<![\\d.])(?:"
                  + RAIL
                  + "(?: ?v)?(?: ?/ ?)){1,4}"
                  + RAIL
                  + "(?: ?v(?:olts?)?)?(?![\\d.]\\d)",
              "all rails fine"),
          // "5VA zero", "5VP is gone".
          new Turn(
              "(?-i:\\b(\\d{1,2}V[A-Z])) (?:(?:is|are|reads|at|also) )*(?:zero|nil|nothing|gone|missing|absent|dead)(?: v(?:olts?)?)?(?= |$|,)",
              "$1 0 V"),
          // "ohms from 5VP to ground: 0.3".
          new Turn(
              "\\b(ohms|resistance) (?=(?:from |between |of |on )?[^\\d ].{2,60}?)(.+?)(?: is|:| reads)? (\\d+(?:\\.\\d+)?)\\.?$",
              "$1 $2 $3 ohms"),
          new Turn(
              "\\b(in|out)puts? of (?-i:(VR\\d+)) and (?-i:(VR\\d+))", "$2 $1put and $3 $1put"),
          // What no part of a good board gets to, of whichever part it is said.
          new Turn(
              "(?<= |^)(?:at |about |around |some |over )*1\\d\\d ?(?:deg|degs|degrees)(?: c| celsius)?(?= |$|,)",
              "hot"),
          new Turn("(?<= |^)(?:at |about |around |some |over )*1\\d\\d ?c(?= |$|,)", "hot"),
          // "counter on X1.OUT: nothing".
          new Turn(
              "\\bcounter (?:on |at )?(.{2,40}?):? (?:shows |reads |gives )?(?:nothing|none|no reading|nil)(?: at all)?$",
              "counter $1 no frequency"),
          // A supply pin is there by its level, and no clock.
          new Turn("\\bvcc(?: is)? (?:there|present|ok|good|fine)(?= |$|,)", "VCC high"),
          new Turn(
              "\\bvcc of ((?-i:[A-Z]+\\d+)) (?:there|present|ok|good|fine)(?= |$|,)",
              "$1.VCC high"),
          new Turn(
              "(?-i:\\b([A-Z]+\\d+))(?: has)?(?: its)? (?:supply|power)(?: is)? (?:present|there)(?= |$|,)",
              "$1.VCC high"),
          // Low-active by a sign before or behind the name: "/IRQ", "CE#".
          new Turn("(?<= |^|\\.)[/!](?-i:([A-Z]{2,5}\\d?|[GEW]))(?= |$|,)", "$1/"),
          new Turn("(?<= |^|\\.)(?-i:([A-Z]{2,5}\\d?))[#*](?= |$|,)", "$1/"),
          // Of a meter's ohms, and not of a track.
          new Turn(
              "\\b(ohms|ohmmeter|resistance)\\b(.{1,40}?)(?::| is| reads| shows|,)? (?:an? )?(?:open(?: circuit)?|infinite|infinity|no reading)(?=$|,)",
              "$1$2 over 100 k"),
          new Turn("(?-i:\\b(VR\\d+)) out(?:put)?(?= to (?:gnd|ground)\\b)", "$1 output"),
          // "0.3 A up on normal": how much it is off is no reading.
          new Turn(BY + " (?:up on|above|over|more than|higher than) " + NORMAL, "too high"),
          new Turn(BY + " (?:below|under|less than|lower than|down on) " + NORMAL, "too low"),
          // "a touch high, 1.8": the figure tells it.
          new Turn(
              ",? (?:is )?(?:a |just a )?(?:touch|bit|trifle|shade|tad|little|hair|slightly) (?:high|low)(?:er)?(?: than (?:usual|normal))?(?= |,|$)",
              ""),
          new Turn(" though(?= (?:reads|is|are|shows|has|stays|sits|measures)\\b)", ""),
          new Turn("(?<=\\d) up to (?=\\d)", " to "),
          // "the low one of the pair has gone".
          new Turn(
              "\\b(?:the )?(?:low|high|lower|higher|deep|second|other) (?:one|note|tone)(?: of the (?:pair|two|chord))?"
                  + " (?:has gone|is gone|is missing|missing|gone|is not there|never comes)\\b",
              "one note missing"),
          new Turn("\\b(?:each|every) one of (?=(?:the|all|its|them|these|those)\\b)", "all of "),
          // Nothing is fine for running warm.
          new Turn(
              "\\b(?:runs?|running)(?: very| rather| quite| a bit| distinctly| noticeably| slightly| really| too)*"
                  + " (?=(?:warm|hot|cold|cool)\\b)",
              "is "),
          new Turn("\\bmemory address(?: line| bit| pin)? (?=\\d\\b)", "MA"),
          new Turn("\\bmemory data(?: line| bit| pin)? (?=\\d\\b)", "MD"),
          new Turn(
              "\\b(?:only )?(?:all|everything|it) (?:is|comes|comes out|came out|appears|stays|stayed|remains|remained)"
                  + " (?:all )?(?:in |just |only )?white\\b",
              "all in white"),
          new Turn("^(?:both )?sticks (?=(?:read|show|give|have|are|do|work)\\b)", "the sticks "),
          new Turn(
              "\\b(?:no|without|without any) (?:trouble|problems?|issues?|difficulty)\\b", "fine"),
          new Turn("\\b(?:there (?:is|are)|there's) (?=-?\\d)", ""),
          // "Beep test from U30.Y0/ to K1: nothing", "U30.Y3/ to K30 beeps".
          new Turn("\\bbeep(?:er)? test\\b(.*?):? nothing$", "continuity$1 open"),
          new Turn(
              "( to (?:the )?(?-i:[A-Z]+\\d+)(?:\\.\\S+)?) beeps(?: fine| ok)?$", "$1 conducts"),
          // Who has gone somewhere is not gone.
          new Turn("\\b(?:i|we) have gone\\b", "i went"),
          new Turn("\\ba (?:low|high) average of (?=-?\\d)", ""),
          new Turn("^nobody (?=is|gets|runs|feels)", "nothing "),
          // "12 V to U35 pin 8 present".
          new Turn(
              "^(?:the )?(\\d+(?:\\.\\d+)? ?v) (?:to|at|on|reaches) ([^,;]+?) (?:is |are )?(?:present|there|ok|okay|fine|good)$",
              "$2 $1"),
          // When, and where, and not what.
          new Turn(" (?:right |just |shortly |soon )?after (?:a |the )?reset(?= |$)", ""),
          new Turn(" (?:at|on|of) the dead keys?(?= |$)", ""),
          // As it always is.
          new Turn(
              "\\b(?:is |are |just |only )*as (?:warm|hot|cool) as (?:before|usual|ever|always|normal)\\b",
              "normal"),
          // What is told before is not of the rest.
          new Turn(
              "\\b(?:the )?(?:rest of the keyboard|other keys) (?:is|are|works?|seems?) ?(?:all )?(?:fine|ok|okay|good|normal)?(?= |$)",
              ""),
          // What it is like is not what it is.
          new Turn("(?:,? |^)as (?:if|though) .*$", ""),
          // "clock at U1: none".
          new Turn("^([^:]{3,40}): (?:none|nil|absent|missing|not there)(?: at all)?$", "no $1"),
          // As often as that, and no amperes: "more than 4 a second".
          new Turn("(?<=\\d) a (second|minute)\\b", " per $1"),
          // "VR1 in 9.1", "VR1 5.0": of its output if of nothing else.
          new Turn(REGULATOR + "(?:\\.| )in(?:put)?" + NO_UNIT, "$1 input $2 V"),
          new Turn(
              REGULATOR + ":? (\\d{1,2}[.,]\\d{1,2})(?: ?v)? (in|out)(?:put)?(?= |$|,)",
              "$1 $3put $2 V"),
          new Turn(REGULATOR + "(?:(?:\\.| )out(?:put)?)?" + NO_UNIT, "$1 output $2 V"),
          // A pin such as U33 4A is no current, and neither is a byte that was written.
          new Turn(
              "(?<![\\w.])(?<![a-z]\\d{1,3} |pin |pad |leg )"
                  + "(?<!wrote |writes |sent |read |reads |got |back |page |for )"
                  + "(-?\\d+(?:\\.\\d+)?)(mv|v|ma|a|hz|khz|mhz|ohms?|k)(?= |$)",
              "$1 $2"),
          // Volts when it was cold or warm.
          new Turn("(?<=\\d v) (?:when )?(cold|hot|warm)(?= |$|,)", " when $1"),
          // What goes on meanwhile: "even with tune running in a loop".
          new Turn(
              " (?:even )?(?:with|while) [^,;]{2,30} (?:running|playing|going)(?: in a loop| all the time)?$",
              ""),
          new Turn(
              "\\b"
                  + VOLTS
                  + " (?:at|on) "
                  + PART
                  + " (?:is |are )?(?:missing|gone|absent|not there)(?= |$)",
              "$1 has no rail"),
          new Turn(
              "\\bno \\+?12 ?v(?:olts?)? (?:at|on|to|reaches) " + PART + "(?= |$)",
              "$1 12 v rail missing"),
          // "not even the drive lamp glows".
          new Turn(
              "\\bnot even (?:the |a )?((?:drive |caps )?(?:lamp|led|light)) "
                  + "(?:glows?|lights?(?: up)?|comes? on|goes on|is on|is lit|blinks?|flashes)\\b"
                  + "(?: (?:when|at|after) (?:it is |i )?(?:switch|power|turn)\\w*(?: on)?)?",
              "$1 dark"),
          // "works for ten minutes then freezes".
          new Turn(
              "^.*\\b(?:works|runs|fine|ok|good|perfect)\\b.* for (?:about |some |the first |a )?"
                  + "(?:few |couple of |\\w+ )?min(?:ute)?s?,?(?: and)? then (?:it )?"
                  + "(?:freezes|hangs|crashes|dies|stops|locks up|goes wild|garbage)\\b.*$",
              "crashes when warm"),
          // "works when I press on U9".
          new Turn(
              "^(?:it |board |machine |only )*(?:works|runs|starts|comes up|boots)(?: again| fine)?"
                  + " (?:when|if|while|as long as) (?:i |you |one )?(?:press|push|lean|squeeze|wiggle)"
                  + "(?:es|ing)?(?: down)?(?: on)? "
                  + PART
                  + "$",
              "pressing on $1 brings it back"),
          new Turn(FELT + "warmer" + THAN, "$1 warm"),
          new Turn(FELT + "hotter" + THAN, "$1 hot"),
          new Turn(FELT + "(?:if anything |rather )?(?:colder|cooler)" + THAN, "$1 cold"),
          // The rail of 12 V by its volts: "12 V good".
          new Turn(
              "^(?<before>(?:and |yet |but |also )?)(?:the )?\\+?12 ?v(?:olts?)? "
                  + "(?:is |was |also |still |too )*(?:good|right|ok|okay|there|present|fine|correct|normal)$",
              "${before}12 v rail fine"),
          // A part called by what it gives is no reading: "the 5 V regulator is hot".
          new Turn(
              "(?<= |^)(?:the )?\\+?\\d+ v(?:olts?)? (?=(?:regulators?|outputs? of)(?: |$))",
              "the "),
          // "there is nothing on the VR3 input", "nothing at the input of VR3".
          new Turn(
              "(?:there is |there's )?nothing (?:on|at|in|from|out of) (?:the )?(?-i:(VR\\d+))(?:'s)? (in|out)put",
              "$1 $2put 0 V"),
          new Turn(
              "(?:there is |there's )?nothing (?:on|at|in|from|out of) (?:the )?(in|out)put of (?-i:(VR\\d+))",
              "$2 $1put 0 V"));

  /** What would be parted at its comma. */
  private static final List<Turn> WHOLE =
      List.of(
          // Of a set and of its text, behind what spoils it.
          new Turn(
              "(?<=^|[.;] )(?:and |but )?(?:underneath|under|behind|beneath|through) (?:the |these |those |all )*(?:lines?|stripes?|bars?|it|them|that)\\b[^.;]*",
              ""),
          // One letter of all.
          new Turn(
              "\\b(?:every|each|all)(?: the)?(?: other)? letters? (?:is|are|looks?) (?:right|fine|ok|good|clean|normal),? (?:except|but|apart from|save|bar)(?: for)? (?:the )?(?:capital |small )?((?-i:[A-Za-z]))(?= |$|,|:|\\.)",
              "the letter $1 looks wrong"),
          // "U43 pin 8 pulses, but pin 11 of U23 doesn't".
          new Turn(
              "\\b(pulses?|moves?|toggles?|counts?|wiggles?)\\b([^.;]{0,30}), but ((?:(?:pin|leg) \\w+ (?:of|on|at) )?(?-i:[A-Z]+\\d+)(?: pin \\w+|\\.\\w+/?)?) (?:doesn't|does not|don't|do not)(?=[,.;]|$)",
              "$1$2, but $3 does not move"),
          // What follows says what "nothing" is.
          new Turn(",? (?:and )?then nothing[:,] (?=no\\b)", ", "),
          // Numbers of a round that are those of its stations.
          new Turn(
              "(?<=\\bbench rom\\b[^.;]{0,80}[:,;] )(?:and )?(\\d\\d(?:(?:, and |, | and | to | up to |-)\\d\\d)*)(?= (?:good|bad|all|fine|ok|fails?|failing|are|is|nil|differ)\\b)",
              "stations $1"),
          new Turn("(?<=\\bstations? \\d\\d) up to (?=\\d\\d\\b)", " to "),
          // Numbers of stations behind what is said of others.
          new Turn("(?<=\\bstations?\\b[^.;]{1,80}\\bbut )(?=\\d\\d\\b)", "stations "),
          new Turn(
              "(?i:\\b(bench rom (?:fails|moans at|complains (?:of|about|at)|trips over|stops at))) (?=\\d\\d\\b)",
              "$1 stations "),
          // What stands there, and not what should.
          new Turn(
              "\\bwhere it (?:should|ought to) (?:say|read|show|be) ['\"]?[\\w ]{2,20}['\"]? (?:you|i|one|it) (?:gets?|sees?|reads?|says?|shows?) ",
              "you get "),
          new Turn(
              "\\b(?:switch|switched|power|powered|turn|turned) (?:it )?on and (?:there is )?nothing(?: at all| happens)?[:,]? ?(?= |$|[a-z.;])",
              "dead, "),
          // What is so as a rule is so, and no good board's.
          new Turn(
              "\\b(?:usually|mostly|as a rule),? (?=(?:there is |there are |i get |you get |it shows |it gives )?(?:no|nothing|never)\\b)",
              ""),
          new Turn(
              "(?<=\\bVR\\d{1,2} (?:out|output)) (?:is )?(?:far |much |way |clearly |well )*too (?:low|high), (?=(?:below|under|above|over|only|just|about) \\d)",
              " is "),
          // As it should be, said behind what was seen.
          new Turn(
              ", as (?:it|they|one|that) (?:should|ought to|must)(?: be)?(?: (?:after|at|on|in|for) [^,;.]*)?(?=[,;.]|$)",
              ""),
          // What pins are for, between them and what they show.
          new Turn(
              "(\\bpins? \\d+(?:(?:, \\d+)* and \\d+)? (?:of|on|at) [^,;.]{2,20}), (?:the |its )?[a-z][a-z ]{3,25}, (?=(?:is|are|was|were|sits?|stays?)\\b)",
              "$1 "),
          new Turn(
              "\\b(?:is |goes |starts |comes up |begins )?(low|high)(?: at)?(?: first)?,? (?:and )?(?:then|afterwards|later) (?:it )?(?:goes |comes |is |back |falls |rises )*(?!\\1)(?:low|high)(?: again)?(?: (?:about |some |around |after )*\\d+ ?(?:ms|s|milliseconds?|seconds?)(?: after [a-z -]+)?)?(?=[,;.]|$)",
              "is pulsing"),
          new Turn(
              "\\bno [a-z ]{0,20}?(?:clock|signal|pulses?|strobes?) (?:at|on) (?:the )?((?-i:[A-Z]+\\d+)(?: pin |\\.)[\\w/]+)[,;:]? (?:and )?(?:it|which|that) (?:just |simply )?(?:is|stays|sits|remains)(?: stuck| always| permanently| constantly)? (low|high)(?: all the time| constantly| permanently| for good)?\\b",
              "$1 is $2"),
          // Of a fuse that goes again: a new one is no cure.
          new Turn(
              "(?-i:\\b(F\\d+)) (?:was|is|had|has) (?:blown|gone|dead)(?:, |\\. ?|; | and )+(?:i |we )?(?:put in|put|fitted|inserted|tried|a)(?: in)? ?(?:a |the )?(?:new|another|fresh|second)(?: one| fuse)?(?: in)?,?(?: and| but)? ?(?:that|it|this|which)?(?: one)? ?(?:blew|blows|went|goes|popped|died)(?: too| as well| at once| again| straight away| immediately| also| out)*",
              "$1 blown; exchanged $1, no change"),
          // Keys in a row behind what they are.
          new Turn(
              "\\b(?:a few|some|several|certain|these|the following|a number of|a handful of|two|three|four|five|six|seven|eight) keys (?:(?:are|do|is) )?(dead|not work|not react|missing|mute|not type): ([^.;]+)",
              "keys $2 are $1"),
          new Turn("\\bthe semi-?colon\\b", "semicolon"),
          new Turn("(?<=(?:\\b[0-9A-Z]|semicolon|comma),? (?:and )?)the (?=[0-9]\\b)", ""),
          new Turn(
              "(?<=colou?r bar[^.;]{1,80}), (?:then )?(?:an?|one) (?:gap|hole|blank|black one|dark one)\\b",
              ""),
          new Turn("(?<=colou?r bar[^.;]{1,80}[a-z],?) (?:again|then)\\b", ""),
          new Turn(
              "\\b(?:of|in|from) the colou?r bar(?: (?:i|you|we|one) (?:only )?(?:sees?|gets?))?:? ("
                  + COLOUR
                  + "(?:(?:,| and|, and)? "
                  + COLOUR
                  + ")*)(?=[.;]|$)",
              "only $1 in the picture"),
          new Turn(
              "\\bthe (?:colou?r )?bar (?:reads|goes|runs|shows|comes out|is)(?: now| as)?:? ("
                  + COLOUR
                  + "(?:(?:,| and|, and)? "
                  + COLOUR
                  + "){3,})",
              "only $1 in the picture"),
          // One key of all.
          new Turn(
              "\\b(?:keyboard|machine|computer) (?:takes|accepts) (?:nothing|no keys?) (?:except|but|apart from|other than)(?: for)? (?:the )?enter\\b(?: key)?",
              "only enter works"),
          // Keys in a row, of which some have no letter.
          new Turn("(?<=\\b(?-i:[A-Z]), )the zero\\b", "0"),
          new Turn("(?<=\\b[0-9A-Z](?:,)? )(?:and )?the star\\b", "and *"),
          // "'Station' comes out as 'Cdadion', 'page' as 'qwe'".
          new Turn("(\"[^\"]{1,20}\") as (?=\"[^\"]{1,20}\")", "$1 comes out as "),
          // What is quoted and missing is not to be read there.
          new Turn("\"([^\"]{1,20})\" (?=(?:is|are) (?:missing|gone|not there))", "the word $1 "),
          // A logic chip by the end of its number.
          new Turn(
              "\\b(the|a|new|another) (?=(?:125|138|139|153|157|244|245|257|259|273|374|393)\\b(?! ?(?:bytes?|pages?|of|in|m?v|m?a|[km]?hz|k?ohms?|deg|degrees?)\\b)(?![.:]\\d))",
              "$1 74LS"),
          // What a good board is held against is not what was seen.
          new Turn(
              "\\b(flatter|sharper|lower|higher|deeper|louder|quieter|fainter|dimmer|brighter|slower|faster) than (?:(?:on|with|at|in) )?(?:my|the|an?|our) (?:other|good|second|working|known-good|spare) [\\w-]+(?: [Bb]oard)?",
              "$1 than usual"),
          new Turn(
              "(?:,|^) ?the (?:other|rest)(?: (?:two|three|four|five|six|seven))?(?: blocks?)? (?:are|is|stay) solid(?= |,|;|\\.|$)",
              ""),
          new Turn(
              ",? on an otherwise (?:empty|blank|black|dark) (?:screen|raster|picture|set|display)",
              ""),
          // What the lamp does when a round is over.
          new Turn(
              "^(?:the )?lamp (?:after|at the end of|at the end) (?:of )?(?:the |a |one )?(?:bench |test )?(?:rom )?round(?: of the bench rom)?[:,]? (?:gives |is )?(?=(?:one|two|three|four|five|once|twice|\\d)\\b)",
              "bench rom lamp "),
          // What somebody concludes.
          new Turn(
              "(?<= |^)(?:the )?(?:keyboard|keys) (?:obviously |evidently |clearly |apparently |seems to |must )?works?,? (?:because|since|as|for) (?=.*\\bblind)",
              ""),
          new Turn(
              "\\b(?:all (?:i have|there is|i get|i see|you get|one gets|that comes)(?: on (?:the )?(?:screen|set|display|picture))? is|only|just|nothing but) (?:a |the )?(?:lone |single )?(?:flashing |blinking |steady )?cursor\\b(?! (?:is|was|does|has|stays|stands|blinks?|flickers?|moves?|missing|gone|wrong)\\b)",
              "cursor alone"),
          // Which place in a row of marks is told behind a comma.
          new Turn(
              ",? \\(?(?:namely |that is |i\\.?e\\.? |counting |the )*(first|second|third|fourth|fifth|sixth|seventh|eighth|last|[1-8](?:st|nd|rd|th))(?: one| mark| sign| place)? (?:from|counting from|counted from) (?:the )?(left|right)\\)?",
              " $1 from the $2"),
          // A comma between stations of a round parts nothing.
          new Turn(
              "(?<=\\bstations? [\\w ,]{1,40}), (?:and )?(?=(?:one|two|three|four|five|six|seven|eight|nine|ten|\\d{1,2})\\b(?! of| out of))",
              " and "),
          // "39 comes back as B9", "wants 00 and gets 20", "39 put in and 19 read".
          new Turn(
              "\\b(?<![\\w.])([0-9a-f]{2}) (?:comes|came|is read|was read|reads|read|gets|got) (?:back )?as (?:an? )?([0-9a-f]{2})\\b",
              "wrote $1 read $2"),
          new Turn(
              "\\b(?:wants|wanted|expects|expected|should read|should be|asked for) ([0-9a-f]{2}),? (?:and |but )?(?:gets|got|reads|read|sees|is|finds|found) ([0-9a-f]{2})\\b",
              "wrote $1 read $2"),
          new Turn(
              "\\b([0-9a-f]{2}) (?:put in|went in|goes in|stored|in),? (?:and |but )?([0-9a-f]{2}) (?:read|comes|came|comes out|came out|out)(?: out| back)?\\b",
              "wrote $1 read $2"),
          // "winks once, then three times", "lamp: two, pause, one".
          new Turn(
              "\\b(?:once|one|1)(?: time| wink| blink| flash| pulse| short)?(?:, | and |, and | )(?:a |then |and |short |long |brief )*(?:pause|gap),?(?: and| then|, then)* (?=(?:once|twice|one|two|three|four|five|six|seven|eight|nine|\\d)\\b)",
              "1 then "),
          new Turn(
              "\\b(twice|two|three|four|five|six|seven|eight|nine|\\d)(?: times| winks| blinks| flashes| pulses| short)?(?:, | and |, and | )(?:a |then |and |short |long |brief )*(?:pause|gap),?(?: and| then|, then)* (?=(?:once|twice|one|two|three|four|five|six|seven|eight|nine|\\d)\\b)",
              "$1 then "),
          new Turn(
              "(?<=\\b(?:wink|winks|blink|blinks|flash|flashes|pulse|pulses|lamp|code|gives)\\b.{0,12}\\b)(once|twice|one|two|three|four|five|six|seven|eight|nine|\\d)(?: times?| short| blinks?| flash(?:es)?)?,? (?:and |and then |then )(once|twice|one|two|three|four|five|six|seven|eight|nine|\\d)(?: times?| short| blinks?| flash(?:es)?)?(?=[,.;)]|$)",
              "$1 then $2"),
          // What was typed, and what stood there.
          new Turn(
              "(?<= |^)['\"]([^'\"]{2,30})['\"] (?:turns? up|turned up|comes? out|came out|ends? up|ended up|shows? up|appears?|arrives?)(?: on (?:the )?screen)? as ['\"]([^'\"]{2,30})['\"]",
              "typed reads '$2'"),
          // As it was before.
          new Turn(
              " (?:where|when) (?:there |it )?(?:used to be|was once|were once|should be) \\d+\\b",
              ""),
          // Which of two notes is the only one.
          new Turn(
              "\\b(only one (?:note|tone)),? (?:and )?(?:that is |it is |namely )?the (?:lower|higher|deeper|upper|deep|high) (?:one|note|tone)?(?= |,|;|\\.|$)",
              "$1"),
          // By what they are called right behind it.
          new Turn(
              "\\bthe other (?:selects|outputs|inputs|lines|signals|strobes),? (?=(?-i:[A-Z]{1,4}\\d{0,2}/?)(?:,| and ))",
              ""),
          // How chips were taken out, between that and what came of it.
          new Turn(
              "(?<=[a-z]\\d{1,2})(?:,? (?:all )?(?:one by one|one after the other|one after another|one at a time|in turn|together))?(?:,? and left (?:them|it|all)(?: all)? out)(?=[:;,.])",
              ""),
          new Turn(
              "(?<![\\w.,])(-?\\d{1,2}),(\\d{1,3})(?= ?(?:m?v|volts?|m?a|amps?|[km]?hz|k?ohms?|k)\\b)",
              "$1.$2"),
          // "AA sent, 2A came back".
          new Turn(
              "\\b([0-9a-f]{2}) (?:sent|written|put out|went out),? (?:and |but )?([0-9a-f]{2})"
                  + " (?:came back|comes back|read back|returned|received|came)\\b",
              "wrote $1 read $2"),
          // "Resistance from the rail to ground, power off, under an ohm".
          new Turn(
              "\\b((?:ohms|resistance) .{3,60}?), (?:with )?(?:the )?power off,? (?=(?:under|over|about|only|less|more|\\d))",
              "$1 "),
          // How the board stood when ohms were read, which is so for all ohms.
          new Turn(
              "(?<=^|[.;:] )(?:unpowered|powered (?:down|off)|switched off|with (?:the |its )?(?:mains|power|supply|board|plug|machine) (?:off|out|unplugged|pulled|disconnected|down|removed)),? (?=.*\\b(?:ohm|ohms|kohms|ohmmeter|resistance|kiloohms|kilohms|k)\\b)",
              ""),
          new Turn(
              "\\b(?:took out|taken out|pulled out|pulled|removed|unplugged|without) (?-i:([A-Z]+\\d+))(?: out)?(?:,| and)? (?:now |then )?it (boots|starts|works|runs)\\b",
              "with $1 out it $2"));

  private Turns() {}

  /** A supply by the volts it is called by, and what it reads. */
  private static String supply(String volts) {
    return "(?<= |^)(?:the )?\\+?"
        + volts
        + " ?v(?:olts?)?(?: rail| line| supply)?(?: is| measures| measured| reads| at|:| =)*"
        + " (\\d{1,2}[.,]\\d{1,2})(?: ?v(?:olts?)?)?\\.?(?= |$|,)";
  }

  /** An entry as typed, in which a figure with a comma has a point. */
  static String whole(String says) {
    String text = says;
    for (Turn turn : WHOLE) {
      text = turn.said.matcher(text).replaceAll(turn.plain);
    }
    return text;
  }

  /** A phrase without turns of speech. */
  static String plain(String phrase) {
    String text = phrase;
    for (Turn turn : ALL) {
      text = turn.said.matcher(text).replaceAll(turn.plain);
    }
    return text;
  }
}
