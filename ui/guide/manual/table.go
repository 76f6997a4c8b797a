package manual

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/formula/plan"
	"contralay/ui/cross/picture"
	"contralay/ui/guide"
	"contralay/ui/paper/tile"
)

// Flag is a flag of a command, or of all.
type Flag struct {
	Name  string   // with its dashes
	Value string   // what it takes, "" for a flag that takes none
	Words []string // the words that it takes, where only some are allowed
	Does  string
}

// Command is a command: its name, what it takes, what it does, and the flags that only it has. The bench has no name.
type Command struct {
	Name, Args, Does string
	Flags            []Flag
}

var shells = []string{"bash", "zsh", "fish"}

// Topics are the pages of the help, that of the keys among them.
func Topics() []string { return append(guide.Names(), "keys") }

// words is a flag that takes one of some words.
func words(name, does string, all ...string) Flag {
	return Flag{Name: name, Value: strings.Join(all, "|"), Words: all, Does: does}
}

var day = Flag{Name: "--on", Value: "DAY", Does: "the date on it, such as 2026-05-31 (default: today)"}

var asJSON = Flag{Name: "--json", Does: "print it as JSON"}

// Commands are the commands in the order of the page.
func Commands() []Command {
	return []Command{
		{Does: "open the bench on the demonstration harness"},
		{Args: "FILE", Does: "open the bench on a file"},
		{Name: "new", Args: "FILE", Does: "write an empty harness"},
		{Name: "import", Args: "LIST... -o FILE",
			Does: "make a harness from wire lists: CSV, TSV, text, Markdown, HTML and wiki tables, xlsx, ods", Flags: []Flag{
				{Name: "--into", Value: "FILE", Does: "instead of -o: attach them to a harness as an independent list"},
				{Name: "--recipe", Value: "FILE", Does: "what the columns mean, kept from an earlier import"},
				words("--unit", "unit of lengths that state none", "mm", "cm", "m", "in", "ft"),
				{Name: "--spec", Value: "S", Does: "specification of wires that state none"},
				{Name: "--sheet", Value: "NAME", Does: "read only this sheet of a workbook; you may repeat it"},
				{Name: "--full", Does: "print every finding on its own line"},
				{Name: "--explain", Does: "instead of -o: print how each table can be read, best first"},
			}},
		{Name: "compare", Args: "A B", Does: "say what changed between two lists or harnesses, and last what was matched; exit 1 if " +
			"anything changed, 2 if the two have no cavity, wire id or signal in common", Flags: []Flag{asJSON}},
		{Name: "check", Args: "FILE", Does: "print the open points, worst first; exit 1 if one is a stop"},
		{Name: "figures", Args: "FILE", Does: "print every computed number as JSON"},
		{Name: "plan", Args: "32x22 4x20 2x2.9mm", Does: "rank lay-ups: quantity x size (AWG of the default spec, or mm), and show what " +
			"one wire more or fewer costs", Flags: []Flag{
			{Name: "--spares", Value: "N", Does: "add up to N spares of the commonest size"},
			{Name: "--lay-ratio", Value: "R", Does: "lay length divided by OD (default 12)"},
			{Name: "--centres", Value: "KIND", Words: []string{"equal", "unequal", "built"}, Does: "equal, unequal (default) or built"},
			{Name: "--centre", Value: "3 or 3x20", Does: "only lay-ups with this many pieces, or these, in the centre"},
			{Name: "--layers", Value: "N", Does: "only lay-ups with N layers round the centre"},
			{Name: "--effort", Value: "N", Does: fmt.Sprintf("search longer: N layers tried (default %d)", plan.AtOnce)},
			asJSON,
		}},
		{Name: "inserts", Args: "32x22 4x20 2x2.9mm", Does: "rank the connector arrangements that take these wires", Flags: []Flag{
			{Name: "--pairs", Value: "N", Does: "and N pairs; 2x24 gives them a size of their own"},
			{Name: "--shielded", Value: "N", Does: "and N shielded pairs, whose drains take a cavity each"},
			{Name: "--spares", Value: "N", Does: "leave N cavities for the commonest size"},
			{Name: "--spec", Value: "S", Does: "specification of the wires (default AS22759/32)"},
			{Name: "--full", Does: "list every arrangement, not the first ten"},
			asJSON,
		}},
		{Name: "run", Args: "FILE", Does: "build at the board, one instruction a screen", Flags: []Flag{
			{Name: "--serial", Value: "N", Does: "build this serial (default: the one that is not finished); " +
				"1,2 cuts for both and ticks both"},
		}},
		{Name: "measured", Args: "FILE...", Does: "compare what was measured with what was predicted", Flags: []Flag{
			{Name: "--accept", Value: "GROUP", Does: `correct this group from now on ("all": every group)`},
			{Name: "--withdraw", Value: "GROUP", Does: "correct it no longer; without FILE, too"},
			{Name: "--without", Value: "NAME", Does: "leave a reading out; you may repeat it"},
			{Name: "--keep-odd", Does: "accept an odd one out with the rest"},
		}},
		{Name: "sheet", Args: "FILE -o DIR", Does: "write the build sheet (pages to print) and its lists (CSV)", Flags: []Flag{
			day,
			{Name: "--serial", Value: "N", Does: "the serial at the head of every page (default: room to write it); with --customer " +
				"one that is in the file"},
			{Name: "--customer", Does: "write the set to hand over instead: drawing, pinout, repair card, mass; with --serial its " +
				"certificate and how it was built, too"},
			{Name: "--semicolon", Does: "lists for a spreadsheet where the comma marks decimals"},
			{Name: "--add", Value: "loads,flags,loops", Words: []string{"loads", "flags", "loops", "loads,flags,loops"},
				Does: "print these pages too: what each wire carries, the flags of the wires, the service loops"},
		}},
		{Name: "section", Args: "FILE BRANCH -o FILE.svg", Does: "write the section of a branch as a drawing", Flags: []Flag{
			{Name: "--layer", Value: "N", Does: "take this layer in hand: 0 is the centre, 1 the first round it"},
			{Name: "--by", Value: "WHAT", Words: picture.Ways(), Does: "what the colours tell apart: colour (default), " +
				"destination, size, role, temperature or tightness"},
		}},
		{Name: "drawing", Args: "FILE -o DIR", Does: "draw the harness at full size: PDF, SVG and DXF", Flags: []Flag{
			words("--paper", "what the PDF is printed on (default a4)", tile.Names()...),
			day,
		}},
		{Name: "help", Args: "TOPIC", Does: "print one page: " + strings.Join(Topics(), ", ")},
		{Name: "completion", Args: "SHELL", Does: "print completions for bash, zsh or fish"},
		{Name: "man", Does: "print the manual page"},
		{Name: "version", Does: "print the release, the commit and its date"},
	}
}

// Flags are the flags that go with every command.
func Flags() []Flag {
	return []Flag{
		{Name: "--catalogue", Value: "FILE", Does: "use the shop's own wire, tube, boot and contact data"},
		{Name: "--ascii", Does: "bench: use only plain characters"},
		{Name: "--light", Does: "bench: the terminal has a light background"},
		words("--colour", "bench: use colour", "auto", "always", "never"),
		{Name: "--bounce", Value: "MS", Does: "bench: count the same key again within MS once (0: off; not given: in a run a " +
			"second Enter within 300 ms counts as none)"},
		{Name: "--help", Does: "print the page of commands"},
	}
}

// out is the flag that says where what is written goes.
var out = Flag{Name: "--out", Value: "FILE", Does: "the file or folder to write; -o for short"}

// Names are the names of the commands.
func Names() (names []string) {
	for _, c := range Commands() {
		if c.Name != "" {
			names = append(names, c.Name)
		}
	}
	return names
}

// EveryFlag are the flags of all commands, each once, by name. One that several commands have takes the same in each.
func EveryFlag() []Flag {
	all := append(Flags(), out)
	for _, c := range Commands() {
		all = append(all, c.Flags...)
	}
	slices.SortStableFunc(all, func(a, b Flag) int { return strings.Compare(a.Name, b.Name) })
	return slices.CompactFunc(all, func(a, b Flag) bool { return a.Name == b.Name })
}
