package ends

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/inserts"
	"contralay/calc/query/why"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/paper/which"
)

// WhichKind is the screen that asks which connector takes what must go in.
const WhichKind desk.Kind = "which connector"

// asking is what the page is asked beside what the harness has: how many more of each wire, of pairs
// and of spares, by termination. "" is a connector that is not there yet.
type asking struct {
	more map[string]map[string]int
	new  Choosing // what takes the one that is chosen for a connector that is not there yet
}

// WhichRow leads from a termination to the arrangements that take what ends there.
func WhichRow(m *desk.Model, terminationID string) desk.Row {
	text := "connector    "
	if _, ok := m.Sheet.Index.Termination[terminationID]; ok {
		text += insertNow(m, terminationID)
	}
	return desk.Row{Key: "which", Text: text, Detail: "Enter: which connectors take its wires, and what each leaves free",
		Enter: func(m *desk.Model) { m.Show(WhichKind, terminationID) }}
}

// WhichNew asks which connector takes wires that are typed; c takes the one that is chosen.
func WhichNew(m *desk.Model, c Choosing) {
	a := desk.State[asking](m)
	c.Gender = model.Gender(cmp.Or(string(c.Gender), string(model.GenderPin)))
	a.new = c
	delete(a.more, "")
	m.Show(WhichKind, "")
}

// question is what the page asks of one connector.
type question struct {
	id     string // of the termination; "" is not there yet
	base   inserts.Want
	more   map[string]int
	shared []string // cavities of it that hold several wires
}

// Keys of what may be asked for more of; a wire has its own.
const (
	morePairs    = "pairs"
	moreShielded = "shielded pairs"
	moreSpares   = "spares"
)

func questionOf(m *desk.Model, id string) (question, bool) {
	a := desk.State[asking](m)
	q := question{id: id}
	switch t, known := m.Sheet.Index.Termination[id]; {
	case known:
		q.base, q.shared = inserts.Of(m.Sheet, t), inserts.Shared(m.Sheet, t)
	case id != "" || a.new.There == nil || !a.new.There(m):
		return q, false
	}
	if a.more == nil {
		a.more = map[string]map[string]int{}
	}
	if a.more[id] == nil {
		a.more[id] = map[string]int{}
	}
	q.more = a.more[id]
	if id == "" {
		for _, size := range usualSizes(m) {
			q.base.Wires = append(q.base.Wires, inserts.Wire{Spec: m.Sheet.Limits.Spec, Size: size})
		}
	}
	return q, true
}

// usualSizes are the gauges that are asked for at a new connector: those of the shop's wire that a
// contact takes, thin to thick.
func usualSizes(m *desk.Model) []string {
	kept := &desk.State[ranked](m).sizes
	return kept.Get(m.Sheet, 0, "", func() []string {
		spec := m.Sheet.Limits.Spec
		return slices.DeleteFunc(m.Sheet.Cat.Sizes(spec), func(size string) bool {
			return !inserts.Takes(m.Sheet.Cat, inserts.Wire{Spec: spec, Size: size})
		})
	})
}

func keyOf(x inserts.Wire) string { return fmt.Sprintf("wire %s %s %v", x.Spec, x.Size, x.OverMM) }

// want is what is asked for in all.
func (q question) want(m *desk.Model) inserts.Want {
	w := q.base
	w.Wires = slices.Clone(q.base.Wires)
	for k := range w.Wires {
		w.Wires[k].Count += q.more[keyOf(w.Wires[k])]
	}
	for _, key := range []string{morePairs, moreShielded} {
		if n := q.more[key]; n > 0 {
			x := pairWire(m, q)
			x.Count = n
			w.Pairs = append(w.Pairs, inserts.Pair{Wire: x, Shielded: key == moreShielded})
		}
	}
	w.Spares += q.more[moreSpares]
	return w
}

// pairWire is the wire of pairs that are asked for: that of which there is most, else 22 AWG.
func pairWire(m *desk.Model, q question) inserts.Wire {
	best := inserts.Wire{Spec: m.Sheet.Limits.Spec, Size: "22"}
	most := 0
	for _, x := range q.base.Wires {
		if n := x.Count + q.more[keyOf(x)]; n > most && x.Size != "" {
			best, most = x, n
		}
	}
	return inserts.Wire{Spec: best.Spec, Size: best.Size, OverMM: best.OverMM}
}

// WhichPage is what must go into a connector, and the arrangements that take it.
func WhichPage(m *desk.Model, w int, id string) desk.Page {
	q, ok := questionOf(m, id)
	if !ok {
		return desk.Page{Empty: "What this connector was for is gone. Esc goes back"}
	}
	if len(q.shared) > 0 {
		return desk.Page{Empty: fmt.Sprintf("Cavity %s of %s holds several wires together. A sealed cavity takes one: "+
			"splice them first, and run one wire here. Esc goes back", words.Few(q.shared), id)}
	}
	p := desk.Page{Lines: []string{"New connector. How many of each go in?"}}
	if id != "" {
		p.Lines = []string{id + ", " + insertNow(m, id) + ". What goes in:"}
	}
	first := 0
	for _, x := range q.base.Wires {
		if x.Size == "22" {
			first = len(p.Rows)
		}
		p.Rows = append(p.Rows, countRow(m, q, keyOf(x), wireText(m, x), x.Count))
	}
	if n := drains(q.base); n > 0 {
		p.Rows = append(p.Rows, desk.Row{Key: "drains", Text: fmt.Sprintf("%-22s %3d", "drains of shields", n),
			Detail: "A drain that ends in a cavity takes one like a wire"})
	}
	p.Rows = append(p.Rows, countRow(m, q, morePairs, "more pairs", 0), countRow(m, q, moreShielded, "more shielded pairs", 0),
		countRow(m, q, moreSpares, "spares wanted", q.base.Spares))
	p.Start = len(p.Rows)
	if id == "" {
		p.Start = first
	}
	a := answer(m, q)
	p.Lines = append(p.Lines, which.Said(a)...)
	p.Rows = append(p.Rows, rankedRows(m, q, a)...)
	return p
}

func insertNow(m *desk.Model, id string) string {
	t := &m.H.Terminations[m.Sheet.Index.Termination[id]]
	switch {
	case t.Insert.V != "":
		return t.Insert.V
	case len(t.Cavities) > 0:
		return words.Plural(len(t.Cavities), "own cavity", "own cavities")
	}
	return "no connector yet"
}

// wireText names a wire: with its specification where it is not the shop's.
func wireText(m *desk.Model, x inserts.Wire) string {
	text := model.SizeWords(x.Size)
	if x.Spec != m.Sheet.Limits.Spec {
		text = x.Spec + " " + text
	}
	return text
}

func drains(w inserts.Want) int {
	n := 0
	for _, x := range w.Drains {
		n += x.Count
	}
	return n
}

// mostMore is a stop against a slip of the finger.
const mostMore = 500

// countRow is so many of something: + - and digits ask for more than the harness has, never for fewer.
func countRow(m *desk.Model, q question, key, says string, has int) desk.Row {
	n := has + q.more[key]
	text := fmt.Sprintf("%-22s %3d", says, n)
	if has > 0 && n != has {
		text += fmt.Sprintf("   %d here", has)
	}
	set := func(m *desk.Model, to int) error {
		if to < has || to > has+mostMore {
			return fmt.Errorf("%d is out of range: %d to %d", to, has, has+mostMore)
		}
		q.more[key] = to - has
		m.Tell(fmt.Sprintf("%s: %d. The list is ranked for that", says, to))
		return nil
	}
	return desk.Row{Key: key, Text: text, Detail: "+ - or digits: how many must go in",
		Step: func(m *desk.Model, by int) {
			if err := set(m, n+by); err != nil {
				m.Refuse(err.Error())
			}
		},
		Field: &desk.Field{Label: says, Number: true, Value: strconv.Itoa(n), Set: func(m *desk.Model, text string) error {
			to, err := strconv.Atoi(text)
			if err != nil {
				return fmt.Errorf("%q is no whole number: give %d to %d", text, has, has+mostMore)
			}
			return set(m, to)
		}}}
}

// ranked is the answer to what was asked last, and the gauges that any contact takes, of the sheet
// that they were asked of.
type ranked struct {
	kept  desk.Kept[inserts.Answer]
	sizes desk.Kept[[]string]
}

func answer(m *desk.Model, q question) inserts.Answer {
	w := q.want(m)
	return desk.State[ranked](m).kept.Get(m.Sheet, 0, fmt.Sprint(w), func() inserts.Answer { return inserts.Rank(m.Sheet.Cat, w) })
}

// rankedRows are the arrangements that take it; then what is not judged.
func rankedRows(m *desk.Model, q question, a inserts.Answer) []desk.Row {
	var out []desk.Row
	columns := fitColumns(m, q)
	for _, f := range a.Fits {
		r := desk.Row{Key: f.Insert.ID, TextOf: func() string { return columns.Line(f) }, Does: "take",
			More:  func() string { return m.Sys.Says(fitText(f)) },
			WhyOf: func() []desk.Reason { return sealReasons(f) },
			Enter: func(m *desk.Model) { takeFit(m, q.id, f.Insert.ID, "") },
			Step: func(m *desk.Model, by int) {
				q.more[moreSpares] = max(0, q.more[moreSpares]+by)
				m.Tell(fmt.Sprintf("spares wanted: %d. The list is ranked for that", q.base.Spares+q.more[moreSpares]))
			}}
		if len(f.Seals) > 0 {
			r.Mark = "?"
		}
		out = append(out, r)
	}
	out = append(out, desk.Row{Key: "any", Text: "any other arrangement", Detail: "Enter lists all by shell, whatever they take",
		Enter: func(m *desk.Model) { chooseFor(m, q.id) }})
	if says := which.Unseen(a.Fits); says != "" {
		out = append(out, desk.Row{Key: "seals", Text: "some seals are not known", Detail: says})
	}
	if n := len(a.NotJudged); n > 0 {
		out = append(out, desk.Row{Key: "not judged", Text: fmt.Sprintf("not judged: %d, contacts in no catalogue", n),
			Detail: strings.Join(a.NotJudged, ", ")})
	}
	return out
}

// sealReasons are the diameters and the seals that do not suit each other.
func sealReasons(f inserts.Fit) []desk.Reason {
	var out []desk.Reason
	put := func(name string, v unit.Millimetre, from catalogue.Origin) {
		out = append(out, desk.Reason{Made: func() (why.Why, bool) {
			return why.LookedUp(name, float64(v), why.Diameter, from), true
		}})
	}
	for _, g := range f.Seals {
		seal := catalogue.Origin{Source: g.Contact.Source, Standing: g.Contact.SealStanding}
		put("OD of "+g.Says, g.OverMM, g.Over)
		put("smallest wire that the seal of size "+g.Contact.Size+" takes", g.Contact.SealMinMM, seal)
		put("largest wire that the seal of size "+g.Contact.Size+" takes", g.Contact.SealMaxMM, seal)
	}
	return out
}

// insertHere is the arrangement of a termination by its first name; "" where it has none.
func insertHere(m *desk.Model, id string) string {
	if t, known := m.Sheet.Index.Termination[id]; known {
		i, _ := m.Sheet.Cat.Insert(m.H.Terminations[t].Insert.V)
		return i.ID
	}
	return ""
}

// fitColumns are the columns of the ranked arrangements.
func fitColumns(m *desk.Model, q question) kit.Columns[inserts.Fit] {
	now := insertHere(m, q.id)
	return kit.GivenColumns([]kit.Column[inserts.Fit]{
		{Head: "", Least: 1, Cell: func(f inserts.Fit) string { return words.Either(f.Insert.ID == now, "=", "") }},
		{Head: "arrangement", Least: 13, Cell: func(f inserts.Fit) string { return which.Names(f.Insert) }},
		{Head: "free", Least: 4, Align: kit.ToRight, Cell: func(f inserts.Fit) string { return strconv.Itoa(f.Free) }},
		{Head: "by size", Cell: func(f inserts.Fit) string { return "free: " + which.Left(f) }},
	}, m.Cfg.ASCII)
}

// fitText is an arrangement that takes it in words: what does not suit first, then what the next larger
// one buys, then where the wires go.
func fitText(f inserts.Fit) string {
	text := ""
	for _, says := range which.Seals(f) {
		text += words.Capital(says) + ". "
	}
	if says := which.Larger(f); says != "" {
		text += says + ". "
	}
	if _, says := f.Insert.Qualified(); says != "" {
		text += words.Capital(says) + ". "
	}
	if len(f.Left) > 1 {
		text += which.Goes(f)
	}
	if text == "" {
		text = "Enter takes it. No larger shell leaves more"
	}
	return strings.TrimSuffix(text, ". ")
}

// takeFit takes an arrangement for the connector that was asked about, in one change; a gender goes
// with it where one was chosen.
func takeFit(m *desk.Model, id, insert string, gender model.Gender) {
	if id == "" {
		c := desk.State[asking](m).new
		*desk.State[Choosing](m) = c
		m.Back()
		c.Take(m, insert)
		return
	}
	t, known := m.Sheet.Index.Termination[id]
	if !known {
		m.Refuse("termination " + id + " is gone")
		return
	}
	got, err := inserts.Take(m.Sheet, t, insert)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	if gender != "" {
		got.H = got.H.EditTermination(t, func(t *model.Termination) { t.Gender = model.Some(gender) })
	}
	m.Back()
	m.Change(got.H, takenText(id, strings.TrimSpace(insert+" "+string(gender)), got))
}

// takenText says in one line what taking an arrangement did.
func takenText(id, insert string, got inserts.Taken) string {
	says := fmt.Sprintf("%s is a %s", id, insert)
	switch {
	case got.Moved > 0 && got.Kept > 0:
		says += fmt.Sprintf(": %d cavities keep their names, %d moved in order", got.Kept, got.Moved)
	case got.Moved > 0:
		says += fmt.Sprintf(": %d cavities moved in order", got.Moved)
	case got.Kept > 0:
		says += ": all cavities keep their names"
	}
	if got.Names > 0 {
		says += fmt.Sprintf(". %d other names went with their cavities", got.Names)
	}
	if got.Listed {
		says += ". The independent list still has the old names"
	}
	if got.Mixed {
		says += ". Which cavity has which contact is not known: check them on the part"
	}
	return says
}

// chooseFor lists all arrangements for a connector.
func chooseFor(m *desk.Model, id string) {
	if id == "" {
		c := desk.State[asking](m).new
		take := c.Take
		c.Take = func(m *desk.Model, insert string) {
			m.Back() // the page that asked which
			take(m, insert)
		}
		Choose(m, c)
		return
	}
	t := &m.H.Terminations[m.Sheet.Index.Termination[id]]
	Choose(m, Choosing{Gender: t.Gender.V, Now: insertHere(m, id),
		There: func(m *desk.Model) bool { _, there := m.Sheet.Index.Termination[id]; return there },
		Take:  func(m *desk.Model, insert string) { takeFit(m, id, insert, Gender(m)) }})
}

// WhichFace draws the arrangement of the row in hand.
func WhichFace(m *desk.Model, w, h int) (title string, lines []string) {
	_, r := m.Hand()
	if r == nil {
		return "", blank(w, h)
	}
	gender := model.GenderPin
	if t, known := m.Sheet.Index.Termination[m.Subject()]; known {
		gender = model.Gender(cmp.Or(string(m.H.Terminations[t].Gender.V), string(gender)))
	} else if g := desk.State[asking](m).new.Gender; g != "" {
		gender = g
	}
	insert := r.Key
	if _, known := m.Sheet.Cat.Insert(insert); !known {
		insert = insertHere(m, m.Subject())
	}
	return faceOf(m, insert, gender, w, h)
}
