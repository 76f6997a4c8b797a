package main

import (
	"errors"
	"fmt"
	"os"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/ui/paper/origin"
)

// world is everything a run touches outside its arguments.
type world struct {
	in, out, err *os.File
	env          func(string) string
	now          func() time.Time
	search       time.Duration             // how long a bench searches by itself
	wrap         func(tea.Model) tea.Model // tests put themselves round the bench; else nil
}

// Exit codes.
const (
	ok      = 0 // it did its work
	stopped = 1 // check found a stop
	usage   = 2 // wrong use, or a file that cannot be read
)

// helpText is the page of commands; the topics of the guide go in.
const helpText = `contralay - build sheets for hand-built wiring harnesses

  contralay                    open the bench on the demonstration harness
  contralay FILE               open the bench on a file
  contralay new FILE           write an empty harness
  contralay import LIST... -o FILE
                               make a harness from wire lists: CSV, TSV, Markdown, xlsx, ods
      --into FILE              instead of -o: attach them to a harness as an independent list
      --recipe FILE            what the columns mean, kept from an earlier import
      --unit mm|cm|m|in|ft     unit of lengths that state none
      --spec S                 specification of wires that state none
      --sheet NAME             read only this sheet of a workbook; you may repeat it
      --full                   print every finding on its own line
      --explain                instead of -o: print how each table can be read, best first
  contralay compare A B        say what changed between two lists or harnesses, and last what
                               was matched; exit 1 if anything changed, 2 if the two have no
                               cavity, wire id or signal in common
      --json                   print it as JSON
  contralay check FILE         print the open points, worst first; exit 1 if one is a stop
  contralay figures FILE       print every computed number as JSON
  contralay plan 32x22 4x20 2x2.9mm
                               rank lay-ups: quantity x size (AWG of the default spec, or mm),
                               and show what one wire more or fewer costs
      --spares N               add up to N spares of the commonest size
      --lay-ratio R            lay length divided by OD (default 12)
      --centres KIND           equal, unequal (default) or built
      --centre 3 or 3x20       only lay-ups with this many pieces, or these, in the centre
      --layers N               only lay-ups with N layers round the centre
      --effort N               search longer: N layers tried (default %d)
      --json                   print it as JSON
  contralay inserts 32x22 4x20 2x2.9mm
                               rank the connector arrangements that take these wires
      --pairs N                and N pairs; 2x24 gives them a size of their own
      --shielded N             and N shielded pairs, whose drains take a cavity each
      --spares N               leave N cavities for the commonest size
      --spec S                 specification of the wires (default AS22759/32)
      --full                   list every arrangement, not the first ten
      --json                   print it as JSON
  contralay run FILE           build at the board, one instruction a screen
      --serial N               build this serial (default: the one that is not finished)
  contralay measured FILE...   compare what was measured with what was predicted
      --accept GROUP           correct this group from now on ("all": every group)
      --without NAME           leave a reading out; you may repeat it
      --keep-odd               accept an odd one out with the rest
  contralay sheet FILE -o DIR  write the build sheet (a page to print) and its lists (CSV)
      --on DAY                 the date on it, such as 2026-05-31 (default: today)
      --semicolon              lists for a spreadsheet where the comma marks decimals
  contralay section FILE BRANCH -o FILE.svg
                               write the section of a branch as a drawing
      --layer N                take this layer in hand: 0 is the centre, 1 the first round it
      --by WHAT                what the colours tell apart: colour (default), destination,
                               size, role, temperature or tightness
  contralay drawing FILE -o DIR
                               draw the harness at full size: PDF, SVG and DXF
      --paper a4|a3|letter|roll610|roll914|roll1067
                               what the PDF is printed on (default a4)
      --on DAY                 the date on it (default: today)
  contralay help TOPIC         print one page: %s
  contralay completion SHELL   print completions for bash, zsh or fish
  contralay version            print the release

  --catalogue FILE             use the shop's own wire, tube, boot and contact data
  --ascii                      bench: use only plain characters
  --light                      bench: the terminal has a light background
  --colour auto|always|never   bench: use colour
  --bounce MS                  bench: count the same key again within MS once (0: off; not
                               given: in a run a second Enter within 300 ms counts as none)

FILE may be - for standard input (check, figures, sheet, section, drawing).
This is a planning aid, not an approval. See the cautions in README.md.
`

// misuse is wrong use: one line on stderr, exit 2.
type misuse struct{ says string }

func (m misuse) Error() string { return m.says }

func run(args []string, w world) int {
	code, err := dispatch(args, w)
	if err == nil {
		return code
	}
	if errors.Is(err, errPipe) {
		return ok
	}
	complain(w, err)
	return usage
}

var errPipe = errors.New("reader went away")

func dispatch(args []string, w world) (int, error) {
	o, rest, err := parse(args)
	if err != nil {
		return usage, err
	}
	if o.help {
		return ok, print(w.out, usageText())
	}
	if len(rest) == 0 {
		return benchOn("", o, w)
	}
	switch cmd, more := rest[0], rest[1:]; cmd {
	case "version":
		return ok, print(w.out, "contralay "+origin.Release+"\n")
	case "help":
		return help(more, w)
	case "completion":
		shell, err := one(cmd, more)
		if err != nil {
			return usage, misuse{"completion needs the name of the shell: bash, zsh or fish"}
		}
		return completion(shell, w)
	case "new":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return newFile(f)
	case "check":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return check(f, o, w)
	case "figures":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return figuresOf(f, o, w)
	case "plan":
		return planOf(more, o, w)
	case "inserts":
		return insertsOf(more, o, w)
	case "import":
		return importLists(more, o, w)
	case "compare":
		return compareTwo(more, o, w)
	case "measured":
		return measuredOf(more, o, w)
	case "run":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		o.run = true
		return benchOn(f, o, w)
	case "sheet":
		f, err := one(cmd, more)
		if err != nil {
			return usage, err
		}
		return sheetFor(f, o, w)
	case "section":
		return sectionOf(more, o, w)
	case "drawing":
		return drawingOf(more, o, w)
	case "learn":
		return usage, misuse{"learn is now called measured: contralay measured FILE... compares what was measured with what was predicted"}
	default:
		if len(more) > 0 {
			return usage,
				misuse{fmt.Sprintf("%q is no command. The commands are new, check, figures, plan, inserts, sheet, section, drawing, run, "+
					"measured, import, "+
					"compare, "+
					"help, completion, version (contralay --help)", cmd)}
		}
		return benchOn(cmd, o, w)
	}
}

func one(cmd string, args []string) (string, error) {
	if len(args) != 1 {
		return "", misuse{fmt.Sprintf("%s needs one FILE (contralay --help)", cmd)}
	}
	return args[0], nil
}
