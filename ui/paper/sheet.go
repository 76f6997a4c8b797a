package paper

import (
	"cmp"
	"fmt"
	"strings"

	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model/visible"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
	"contralay/ui/paper/origin"
	"contralay/ui/paper/page"
	"contralay/ui/paper/set"
)

// Meta is what a sheet says of itself and cannot know: who prints it gives it.
type Meta struct {
	On      string // the day
	Hash    string // of the file it was made from; "" where there is none
	File    string // its name, without folder
	Unsaved bool   // made from work that is in no file
	Shop    string // names of the catalogues that were added to the program's own; "" for none
	Serial  string // of the harness that is built from it; "" leaves room to write it in
	Add     Add    // pages that are not printed by default
}

// Add is the pages that are printed on request.
type Add struct {
	Loads bool // what each wire carries, and what feeds it
	Flags bool // the flags of the wires, to check those that were printed
	Loops bool // the service loops alone, to strike out
}

// Sheet is one build sheet, ready to be written out.
type Sheet struct {
	HTML     []byte
	Lists    []list.Table // each a file of its own, too
	Without  []string     // the files of the lists that have no row this time
	Identity string       // no other sheet has it
	Pages    page.Set
}

// Make builds the sheet: one page of HTML that holds all it needs, and its lists. It is a
// pure function of the sheet and of what it is told of file and day.
func Make(s *sheet.Sheet, meta Meta) (Sheet, error) {
	m := makerOf(s)
	meta.File, meta.Shop, meta.Serial = visible.Line(meta.File), visible.Line(meta.Shop), visible.Line(meta.Serial)
	out := Sheet{}
	for _, l := range m.lists() {
		if len(l.Rows) > 0 {
			out.Lists = append(out.Lists, l)
		} else {
			out.Without = append(out.Without, l.File)
		}
	}
	o := origin.Of(s)
	pages := page.Lay(m.blocks(meta, o))
	frame := m.frame(meta)
	var err error
	if out.Identity, err = identify(o, pages.HTML(frame), out.Lists); err != nil {
		return Sheet{}, err
	}
	for k := range out.Lists {
		out.Lists[k].Sheet = fmt.Sprintf("%s rev %s, identity %s", list.Dash(s.H.Head.Number.V), list.Dash(s.H.Head.Revision.V),
			out.Identity)
	}
	frame.Identity = out.Identity
	out.Pages, out.HTML = pages, safe(pages.HTML(frame))
	return out, nil
}

// lists is every list of the set, as they are written beside it.
func (m maker) lists() []list.Table {
	return append([]list.Table{m.branches(), m.ends(), m.units(), m.cutList(), m.flags(), m.pinList(), m.splices(), m.labels(), m.loads(),
		m.feeds(), m.ringOut(), m.isolation(), m.drops(), m.loops(), m.spares(), m.threadList()}, bought(m).lists()...)
}

// identify gives a sheet its identity, which is made from all that is printed but itself.
func identify(o origin.Origin, pages []byte, lists []list.Table) (string, error) {
	texts := [][]byte{pages}
	for _, l := range lists {
		text, err := CSV(l)
		if err != nil {
			return "", err
		}
		texts = append(texts, []byte(l.File), text)
	}
	return o.Identity(texts...), nil
}

// frame is what stands at the head and the foot of every page.
func (m maker) frame(meta Meta) page.Frame {
	h := &m.H.Head
	state := strings.Join(list.NonEmpty(meta.On, list.Word("file ", meta.File), meta.Hash), "  ·  ")
	if meta.Unsaved {
		state = strings.Join(list.NonEmpty("PRINTED FROM UNSAVED CHANGES", state), "  ·  ")
	}
	return page.Frame{Number: h.Number.V, Revision: h.Revision.V, Name: h.Name.V, Serial: meta.Serial, Foot: state, Kind: "build sheet"}
}

// madeFrom is what a sheet was made from, each with its name.
func (m maker) madeFrom(meta Meta, o origin.Origin) string {
	unsaved := ""
	if meta.Unsaved {
		unsaved = "PRINTED FROM UNSAVED CHANGES: no file holds this"
	}
	return "Made from file " + cmp.Or(strings.Join(list.NonEmpty(meta.File, meta.Hash, unsaved), ", "), "none") + ", harness " + o.Harness +
		", catalogue " + o.Catalogue + ", the program's own" + list.Word(", then ", meta.Shop) + ", " + o.Learned() +
		", release\u00a0" + o.Release + "."
}

// blocks is the shop's set in the order of the work.
func (m maker) blocks(meta Meta, o origin.Origin) []page.Block {
	rest := set.Drawing(m.Maker)
	add := func(fresh bool, blocks []page.Block) {
		if len(blocks) > 0 {
			blocks[0].NewPage = blocks[0].NewPage || fresh
			rest = append(rest, blocks...)
		}
	}
	add(true, set.Kit(m.Maker))
	add(false, set.Tubes(m.Maker))
	add(true, set.Cut(m.Maker))
	add(false, laycard.Units(m.Maker))
	add(true, laycard.Pages(m.Maker))
	add(false, []page.Block{set.Hold(m.Maker, run.HoldBare)})
	add(false, set.Threading(m.Maker))
	if ends := connector.Blocks(m.Maker); len(ends) > 0 {
		add(false, append([]page.Block{page.Section(set.CrimpName), connector.Samples()}, ends...))
	}
	add(false, m.tests())
	add(false, set.Spares(m.Maker, m.spares(), m.usedLoops()))
	for _, t := range m.built() {
		add(false, page.List(t))
	}
	if meta.Add.Loads {
		add(true, page.List(m.loads()))
		add(false, page.List(m.feeds()))
	}
	if meta.Add.Flags {
		add(true, page.List(m.flags()))
	}
	if meta.Add.Loops {
		add(true, page.List(m.loops()))
	}
	add(false, []page.Block{page.Text(m.madeFrom(meta, o), page.Small)})
	return append(set.Traveller(m.Maker, rest), rest...)
}

// tests is all that a meter tests, each after the hold that it is met at, and who signs for it.
func (m maker) tests() []page.Block {
	out := []page.Block{page.Section(set.TestName), set.Hold(m.Maker, run.HoldPinned)}
	out = append(out, meter.Ring(m.Maker)...)
	out = append(out, meter.Isolation(m.Maker)...)
	out = append(out, set.Hold(m.Maker, run.HoldFit), set.Hold(m.Maker, run.HoldLoaded))
	out = append(out, meter.Drop(m.Maker)...)
	return append(out, meter.Sign()...)
}
