package add

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// mostDevices is a stop against a slip of the finger.
const mostDevices = 100

// DevicesAsk is what a person answers to have devices added.
type DevicesAsk struct {
	Kind       string            // id of the kind in the catalogue
	Name       string            // one of its names; "" is the first
	Count      int               // how many
	At         string            // breakout, or end of a branch, that their legs hang on; "" hangs none
	LengthsMM  []unit.Millimetre // of the legs, one for each; 0 and what is left out are not measured yet
	Controller string            // termination where wires go to that the kind sends to a controller, a feed or a ground; "" is none
	Ends       map[string]string // another termination for wires of one far end: "chassis star point" → "GND1"
	Feed       Feeding           // how the devices share a feed; "" is FeedSplice
	Spec       string            // of the wires; "" is the shop's
	Size       string            // of every wire; "" is what the kind begins with
	Boot       string            // catalogue id of the boot of each device; "" is none
}

// Feeding is how devices share a feed.
type Feeding string

// The ways to feed several devices.
const (
	FeedSplice Feeding = "splice" // one wire from the connector to a splice, and one from there to each
	FeedEach   Feeding = "each"   // a wire of its own from the connector to each
)

// Feedings are both.
var Feedings = []Feeding{FeedSplice, FeedEach}

// placeholder is the size of a wire for which its kind gives none.
const placeholder = "22"

// Devices adds devices of a kind: their terminations, wires, units, splices and legs. The error
// says what nothing can be made of; what a single wire lacks is told in Says.
func Devices(s *sheet.Sheet, ask DevicesAsk) (Added, error) {
	d, err := newDevices(s, ask)
	if err != nil {
		return Added{H: s.H}, err
	}
	d.ends()
	d.feeds()
	for n := range ask.Count {
		d.wireUp(n)
	}
	d.tellWires()
	d.tellKind()
	return d.done(), nil
}

// devices is the adding of some devices.
type devices struct {
	*maker
	ask    DevicesAsk
	kind   catalogue.Device
	name   string // the one that was chosen
	spec   string
	terms  []string            // ids, one for each device
	names  []string            // and what they are called
	splice map[int]string      // row of the kind → splice that feeds it
	of     map[int][]string    // row → ids of its wires
	sizes  map[int][2]string   // row → specification and size
	pinned map[string][]string // termination → "101 in 1" …
	where  []string            // terminations in the order they got wires
}

func newDevices(s *sheet.Sheet, ask DevicesAsk) (*devices, error) {
	d := &devices{maker: newMaker(s), ask: ask, splice: map[int]string{}, of: map[int][]string{}, sizes: map[int][2]string{},
		pinned: map[string][]string{}}
	kind, ok := s.Cat.Device(ask.Kind)
	if !ok {
		return nil, fmt.Errorf("the catalogue has no device kind %q; allowed: %s", ask.Kind,
			listOf(idsOf(s.Cat.Devices, func(k catalogue.Device) string { return k.ID }), "none: the catalogue has no kind of device"))
	}
	d.kind, d.name, d.spec = kind, kind.Names[0], s.Limits.Spec
	if ask.Name != "" {
		d.name = ask.Name
	}
	if ask.Spec != "" {
		d.spec = ask.Spec
	}
	if d.ask.Feed == "" {
		d.ask.Feed = FeedSplice
	}
	switch _, hasBoot := s.Cat.Boot(ask.Boot); {
	case !slices.Contains(kind.Names, d.name):
		return nil, fmt.Errorf("%s is not called %q; allowed: %s", kind.ID, d.name, strings.Join(kind.Names, ", "))
	case ask.Count < 1 || ask.Count > mostDevices:
		return nil, fmt.Errorf("%d devices cannot be added at once; allowed: 1 to %d", ask.Count, mostDevices)
	case len(ask.LengthsMM) > ask.Count:
		return nil, fmt.Errorf("there are %d lengths for %d devices; allowed: one for each", len(ask.LengthsMM), ask.Count)
	case !slices.Contains(Feedings, d.ask.Feed):
		return nil, fmt.Errorf("%q is no way to feed them; allowed: splice, each", ask.Feed)
	case ask.Boot != "" && !hasBoot:
		return nil, fmt.Errorf("the catalogue has no boot %q; allowed: %s", ask.Boot, listOf(s.Cat.BootIDs(), "none"))
	}
	for _, v := range ask.LengthsMM {
		if !(v >= 0) || !unit.Finite(float64(v)) {
			return nil, fmt.Errorf("a leg cannot be %v mm long; allowed: more than 0, or 0 where it is not measured yet", v)
		}
	}
	if _, isBreakout := s.Index.Breakout[ask.At]; ask.At != "" && !isBreakout {
		if _, err := d.termination(ask.At); err != nil {
			return nil, fmt.Errorf("there is no breakout %q to hang legs on, and no termination either; allowed: %s", ask.At,
				listOf(idsOf(s.H.Breakouts, func(b model.Breakout) string { return b.ID }), "none: the harness has no breakout"))
		}
	}
	for _, id := range append([]string{ask.Controller}, values(ask.Ends)...) {
		if id != "" {
			if _, err := d.termination(id); err != nil {
				return nil, err
			}
		}
	}
	return d, nil
}

// values are the values of a map in the order of its keys.
func values(of map[string]string) []string {
	var out []string
	for _, k := range sortedKeys(of) {
		out = append(out, of[k])
	}
	return out
}

// ends makes the terminations and hangs them.
func (d *devices) ends() {
	title := d.title()
	for n := range d.ask.Count {
		t := model.Termination{ID: d.h.FreeID(d.prefix()), Name: model.Some(d.nextName(title)), Device: model.Some(d.name)}
		for _, c := range d.kind.Carries {
			if !c.Drain() {
				t.Cavities = append(t.Cavities, c.Cavity)
			}
		}
		if d.kind.Contact != "" {
			t.Contacts = map[string][]string{d.kind.Contact: slices.Clone(t.Cavities)}
		}
		if d.ask.Boot != "" {
			t.Boot, t.Datum = model.Some(d.ask.Boot), model.Some(model.DatumBootLip)
		}
		d.h.Terminations = append(d.h.Terminations, t)
		d.terms, d.names = append(d.terms, t.ID), append(d.names, t.Name.V)
		if d.ask.At != "" {
			length := unit.Millimetre(0)
			if n < len(d.ask.LengthsMM) {
				length = d.ask.LengthsMM[n]
			}
			h, leg, err := d.h.Hang(d.ask.At, t.ID, length)
			if err != nil { // At is there and the termination is new
				d.tell(Missing, "from", []string{t.ID}, Taken{}, "%s is not hung: %s", t.ID, err)
				continue
			}
			d.h, d.out.Branches = h, append(d.out.Branches, leg)
		}
	}
	d.out.Terminations = d.terms
	d.tellEnds()
}

func (d *devices) tellEnds() {
	ids := strings.Join(d.terms, ", ")
	d.chose("id", d.terms, "%s: the next free numbers. They are named %s", ids, strings.Join(d.names, ", "))
	d.tell(Chosen, "cavities", d.terms, d.kind.Layout, "%s has the cavities %s. Their names and order differ by maker: check the part",
		each(d.terms), strings.Join(d.h.Terminations[len(d.h.Terminations)-1].Cavities, ", "))
	if d.kind.Contact == "" {
		d.tell(Missing, "contacts", d.terms, Taken{}, "The contact sizes and the seals of %s are not known: give them from the part", ids)
	}
	if d.ask.At == "" {
		d.tell(Missing, "branch", d.terms, Taken{}, "%s hangs on no breakout yet: its wires have no way", each(d.terms))
		return
	}
	d.chose("branch", d.out.Branches, "%s hangs on %s by %s, the next free numbers", each(d.terms), d.ask.At,
		strings.Join(d.out.Branches, ", "))
	var open []string
	for n, leg := range d.out.Branches {
		if n >= len(d.ask.LengthsMM) || d.ask.LengthsMM[n] == 0 {
			open = append(open, leg)
		}
	}
	if len(open) > 0 {
		d.tell(Missing, "length_mm", open, Taken{}, "The length of %s is not given: measure it", strings.Join(open, ", "))
	}
}

// each is ids as the subject of a sentence about one of them.
func each(ids []string) string {
	if len(ids) == 1 {
		return ids[0]
	}
	return "Each of " + strings.Join(ids, ", ")
}

// prefix is what the ids of the ends begin with, by the name that was chosen.
func (d *devices) prefix() string {
	if k := slices.Index(d.kind.Names, d.name); k >= 0 && k < len(d.kind.Prefix) && len(d.kind.Prefix) > 1 {
		return d.kind.Prefix[k]
	}
	return d.kind.Prefix[0]
}

// title is the trade word of the name that was chosen: what stands before its first comma, with
// a capital letter.
func (d *devices) title() string {
	word, _, _ := strings.Cut(d.name, ",")
	return capital(word)
}

func capital(word string) string {
	if word == "" {
		return word
	}
	return strings.ToUpper(word[:1]) + word[1:]
}

// nextName is a title with the next free number; without one for a device that is alone.
func (d *devices) nextName(title string) string {
	taken := map[string]bool{}
	for k := range d.h.Terminations {
		taken[d.h.Terminations[k].Name.V] = true
	}
	if d.ask.Count == 1 && !taken[title] && !taken[title+" 1"] {
		return title
	}
	n := 1
	if taken[title] {
		n = 2
	}
	for taken[title+" "+strconv.Itoa(n)] {
		n++
	}
	return title + " " + strconv.Itoa(n)
}

// together is the letter that makes rows of the kind one unit: of their shield, else of their pair.
func together(c catalogue.DeviceCavity) string {
	switch {
	case c.Shield != "":
		return "shield " + c.Shield
	case c.Pair != "":
		return "pair " + c.Pair
	}
	return ""
}

// farEnd is the termination where wires of a row go; false where none is given.
func (d *devices) farEnd(c catalogue.DeviceCavity) (int, bool) {
	id := d.ask.Controller
	if other := d.ask.Ends[c.Far]; other != "" {
		id = other
	}
	if id == "" {
		return 0, false
	}
	return d.s.Index.Termination[id], true
}

// row is the wire of one row of the kind without its ends.
func (d *devices) row(r int) model.Wire {
	c := d.kind.Carries[r]
	spec, size := d.sizeOf(r)
	w := model.Wire{Spec: spec, Size: size, Role: model.Some(model.Role(c.Role))}
	if d.kind.Outside == outsideSafety {
		w.Safety = model.Some(true)
	}
	if d.kind.Outside == "" {
		shared{amps: c.Amps, rest: c.RestA, onS: c.OnS, periodS: c.PeriodS}.put(&w)
	}
	return w
}

// outsideSafety is what a kind says that life hangs on.
const outsideSafety = "safety"

// sizeOf is the specification and the size of the wires of a row.
func (d *devices) sizeOf(r int) (spec, size string) {
	if got, ok := d.sizes[r]; ok {
		return got[0], got[1]
	}
	c := d.kind.Carries[r]
	size = c.Size
	switch {
	case d.ask.Size != "":
		size = d.ask.Size
	case size == "":
		size = placeholder
	}
	spec, size, says := d.made(d.spec, size)
	d.sizes[r] = [2]string{spec, size}
	if says != "" {
		d.chose("spec", nil, "%s", says)
	}
	return spec, size
}

// feeds makes the splices and the wires that feed them: one for each row of a feed, so that two
// cavities of one device are never joined.
func (d *devices) feeds() {
	if d.ask.Feed != FeedSplice || d.ask.Count < 2 {
		return
	}
	_, isBreakout := d.s.Index.Breakout[d.ask.At]
	for r, c := range d.kind.Carries {
		switch {
		case c.Feed == "" || c.Drain():
			continue
		case together(c) != "":
			d.chose("splice", nil, "The feed of cavity %s is twisted with other wires of its device: each has its own, without a splice",
				c.Cavity)
			continue
		case !isBreakout:
			d.tell(Missing, "splice", nil, Taken{},
				"A splice lies at a breakout, and the legs hang on none: each device has a feed of its own")
			return
		}
		d.feed(r)
	}
}

// feed makes the splice of one row and the wire that feeds it.
func (d *devices) feed(r int) {
	c := d.kind.Carries[r]
	id := d.h.FreeID("S")
	d.h.Splices = append(d.h.Splices, model.Splice{ID: id, At: d.ask.At})
	d.out.Splices = append(d.out.Splices, id)
	d.splice[r] = id
	w := d.row(r)
	sum := share(c, d.ask.Count)
	bears := true
	var allowed unit.Ampere
	if c.Amps > 0 && d.kind.Outside == "" {
		w.Amps, w.OnS, w.PeriodS, w.RestA = model.Opt[unit.Ampere]{}, model.Opt[unit.Second]{}, model.Opt[unit.Second]{},
			model.Opt[unit.Ampere]{}
		sum.put(&w)
		size := d.ask.Size
		if size == "" {
			size, allowed, bears = feedSize(sum.rms(), c.Size)
		}
		var says string
		if w.Spec, w.Size, says = d.made(d.spec, size); says != "" {
			d.chose("spec", nil, "%s", says)
		}
	}
	what := shortOf(d.kind, r)
	w.Signal = model.Some(capital(c.Feed) + " " + what)
	if strings.HasPrefix(c.Feed, what) {
		w.Signal = model.Some(capital(c.Feed))
	}
	w.To = model.Some(id)
	d.connect(&w, c, 1)
	wire := d.wire(w)
	d.pin(w.From.V, wire)
	d.chose("splice", []string{id}, "%s at %s joins the feeds of %s. Move its sleeve along a branch where it is in the way", id, d.ask.At,
		strings.Join(d.terms, ", "))
	if !w.Amps.Set {
		return
	}
	d.tell(Chosen, "amps", []string{wire}, Taken{Standing: worst(c.AmpsIs, duty(c)).Standing, Worked: true, From: c.AmpsIs.From},
		"%s feeds %s: %s, %s A as heat sees it", wire, id, sum.words, plainAmps(sum.rms()))
	switch {
	case d.ask.Size != "":
	case bears:
		d.tell(Chosen, "size", []string{wire}, Taken{Standing: worst(c.AmpsIs, duty(c)).Standing, Worked: true, From: "A1"},
			"%s is %s: the table gives %s A to it in a full bundle at 70 C", wire, model.SizeWords(w.Size), plainAmps(allowed))
	default:
		d.tell(Missing, "size", []string{wire}, Taken{Standing: catalogue.Published, From: "A1"},
			"%s carries more than any size of the table bears: use several feeds", wire)
	}
}

// duty is how far the duty of a row can be trusted; one that is always on has none.
func duty(c catalogue.DeviceCavity) Taken {
	if c.OnS == 0 {
		return c.AmpsIs
	}
	return c.DutyIs
}

// shortOf is what a row of a kind carries, without what follows its comma where no other row
// begins alike.
func shortOf(kind catalogue.Device, r int) string {
	word, _, _ := strings.Cut(kind.Carries[r].What, ",")
	for k, c := range kind.Carries {
		if other, _, _ := strings.Cut(c.What, ","); k != r && other == word {
			return kind.Carries[r].What
		}
	}
	return word
}

// connect gives a wire of a row its end at the connector, where there is one and it has room for
// n of them.
func (d *devices) connect(w *model.Wire, c catalogue.DeviceCavity, n int) {
	term, ok := d.farEnd(c)
	if !ok {
		return
	}
	if got, ok := d.cavities(term, w.Spec, w.Size, n); ok {
		w.From = model.Some(d.s.H.Terminations[term].ID + ":" + got[0])
	}
}

// pin remembers which wire stands in which cavity of a connector.
func (d *devices) pin(end, wire string) {
	e, ok := model.ParseEnd(end)
	if !ok || e.Termination == "" {
		return
	}
	if d.pinned[e.Termination] == nil {
		d.where = append(d.where, e.Termination)
	}
	d.pinned[e.Termination] = append(d.pinned[e.Termination], wire+" in "+e.Cavity)
}

// wireUp makes the wires and units of the nth device.
func (d *devices) wireUp(n int) {
	var made []string         // by row
	at := map[string]string{} // cavity of the device → wire
	units := map[string][]string{}
	var letters []string
	reserved := map[int]string{} // row → cavity at the connector, taken with the rest of its unit
	drain := map[string]string{}
	for r, c := range d.kind.Carries {
		letter := together(c)
		if letter != "" && !c.Drain() && units[letter] == nil {
			letters = append(letters, letter)
			units[letter] = []string{}
			d.takeTogether(letter, reserved, drain)
		}
		if c.Drain() {
			made = append(made, "")
			continue
		}
		w := d.row(r)
		w.Signal = model.Some(d.names[n] + " " + shortOf(d.kind, r))
		w.To = model.Some(d.terms[n] + ":" + c.Cavity)
		switch {
		case d.splice[r] != "":
			w.From = model.Some(d.splice[r])
		case letter != "":
			if reserved[r] != "" {
				w.From = model.Some(reserved[r])
			}
		default:
			d.connect(&w, c, 1)
		}
		id := d.wire(w)
		made = append(made, id)
		at[c.Cavity] = id
		d.of[r] = append(d.of[r], id)
		d.pin(w.From.V, id)
		if letter != "" {
			units[letter] = append(units[letter], id)
		}
	}
	for r, c := range d.kind.Carries {
		if back := at[c.Return]; back != "" {
			k := slices.IndexFunc(d.h.Wires, func(w model.Wire) bool { return w.ID == made[r] })
			d.h.Wires[k].Return = model.Some(back)
		}
	}
	for _, letter := range letters {
		d.unit(n, letter, units[letter], drain[letter])
	}
}

// takeTogether takes the cavities of the wires of a unit and of its drain: all of one connector,
// neighbours where there are any, or none.
func (d *devices) takeTogether(letter string, reserved map[int]string, drain map[string]string) {
	var rows []int
	shielded := false
	for r, c := range d.kind.Carries {
		switch {
		case together(c) != letter:
		case c.Drain():
			shielded = true
		default:
			rows = append(rows, r)
		}
	}
	term, ok := d.farEnd(d.kind.Carries[rows[0]])
	spec, size := d.sizeOf(rows[0])
	for _, r := range rows {
		other, is := d.farEnd(d.kind.Carries[r])
		_, thick := d.sizeOf(r)
		ok = ok && is && other == term && thick == size
	}
	if !ok { // they part, or none is given: each by itself
		for _, r := range rows {
			w := d.row(r)
			d.connect(&w, d.kind.Carries[r], 1)
			reserved[r] = w.From.V
		}
		return
	}
	id := d.s.H.Terminations[term].ID
	n := len(rows)
	if shielded {
		n++
	}
	got, found := []string(nil), false
	if shielded && len(d.free(term, spec, size)) >= n || shielded && !d.listed(term) {
		got, found = d.cavities(term, spec, size, n)
	}
	if !found {
		if got, found = d.cavities(term, spec, size, len(rows)); !found {
			return
		}
	}
	for k, r := range rows {
		reserved[r] = id + ":" + got[k]
	}
	if len(got) > len(rows) {
		drain[letter] = id + ":" + got[len(rows)]
	}
}

// unit makes the wires of one letter up.
func (d *devices) unit(n int, letter string, ids []string, drain string) {
	u := model.Unit{ID: d.unitID(), Name: model.Some(d.names[n]), Wires: ids}
	shield := strings.HasPrefix(letter, "shield ")
	if build := len(ids) - 2; build >= 0 && build < len(model.UnitBuilds) {
		u.Build = model.Some(model.UnitBuilds[build])
	}
	if shield {
		u.Shield, u.DrainTo = model.Some(true), model.Some("cut")
		if drain != "" {
			u.DrainFrom = model.Some(drain)
		}
	}
	d.h.Units = append(d.h.Units, u)
	d.out.Units = append(d.out.Units, u.ID)
	what := string(u.Build.V)
	if shield {
		what = "shielded " + what
	}
	d.tell(Chosen, "unit", []string{u.ID}, d.kind.Layout, "%s is a %s of %s", u.ID, what, strings.Join(ids, ", "))
	switch {
	case !shield:
	case drain != "":
		d.tell(Chosen, "drain_from", []string{u.ID}, d.kind.Layout, "The shield of %s is joined at %s and cut at %s", u.ID, drain,
			d.terms[n])
		d.pin(drain, "the drain of "+u.ID)
	default:
		d.tell(Missing, "drain_from", []string{u.ID}, Taken{},
			"The drain of %s has no cavity at the other end: it is cut at %s and ends nowhere yet",
			u.ID, d.terms[n])
	}
	if pairs := d.pairsIn(letter); pairs > 1 || shield && pairs == 1 && !d.allPaired(letter) {
		d.chose("unit", []string{u.ID}, "In the shield of %s only some wires are twisted by two. A unit is twisted as a whole: %s is "+
			"made as a %s",
			u.ID, u.ID, u.Build.V)
	}
}

// pairsIn is how many letters of pairs a shield holds.
func (d *devices) pairsIn(letter string) int {
	seen := map[string]bool{}
	for _, c := range d.kind.Carries {
		if together(c) == letter && c.Pair != "" {
			seen[c.Pair] = true
		}
	}
	return len(seen)
}

func (d *devices) allPaired(letter string) bool {
	return !slices.ContainsFunc(d.kind.Carries, func(c catalogue.DeviceCavity) bool {
		return together(c) == letter && !c.Drain() && c.Pair == ""
	})
}
