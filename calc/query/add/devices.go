package add

import (
	"fmt"
	"slices"
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
	terms  []string         // ids, one for each device
	names  []string         // and what they are called
	splice map[int]string   // row of the kind → splice that feeds it
	of     map[int][]string // row → ids of its wires
	sizes  map[int]wireSize // row → what its wires are
	told   []Guess          // of wires: what is the same of several rows is one
}

// wireSize is what a wire is, and what is other than asked, "" nothing.
type wireSize struct{ spec, size, says string }

func newDevices(s *sheet.Sheet, ask DevicesAsk) (*devices, error) {
	d := &devices{maker: newMaker(s), ask: ask, splice: map[int]string{}, of: map[int][]string{}, sizes: map[int]wireSize{}}
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
	c, is := d.kind.Carries[r], d.sizeOf(r)
	w := model.Wire{Spec: is.spec, Size: is.size, Role: model.Some(model.Role(c.Role))}
	if d.kind.Outside == outsideSafety {
		w.Safety = model.Some(true)
	}
	if d.rated(c) {
		shared{amps: c.Amps, rest: c.RestA, onS: c.OnS, periodS: c.PeriodS}.put(&w)
	}
	return w
}

// rated reports whether the current of a row is known and the sheet rates it.
func (d *devices) rated(c catalogue.DeviceCavity) bool { return c.Amps > 0 && d.kind.Outside == "" }

// outsideSafety is how a kind says that life hangs on it.
const outsideSafety = "safety"

// sizeOf is what the wires of a row are.
func (d *devices) sizeOf(r int) wireSize {
	if is, ok := d.sizes[r]; ok {
		return is
	}
	size := d.kind.Carries[r].Size
	switch {
	case d.ask.Size != "":
		size = d.ask.Size
	case size == "":
		size = placeholder
	}
	d.sizes[r] = d.made(d.spec, size)
	return d.sizes[r]
}

// wireUp makes the wires and units of the nth device.
func (d *devices) wireUp(n int) {
	wires := map[string]string{} // cavity of the device → its wire
	units := d.unitsOf()
	for r, c := range d.kind.Carries {
		if c.Drain() {
			continue
		}
		w := d.row(r)
		w.Signal = model.Some(d.names[n] + " " + shortOf(d.kind, r))
		w.To = model.Some(d.terms[n] + ":" + c.Cavity)
		u := units[r]
		switch {
		case d.splice[r] != "":
			w.From = model.Some(d.splice[r])
		case u != nil:
			if u.rows[0] == r {
				d.takeTogether(u)
			}
			w.From = u.ends[r]
		default:
			d.connect(&w, c)
		}
		id := d.wire(w)
		wires[c.Cavity] = id
		d.of[r] = append(d.of[r], id)
		if u != nil {
			u.wires = append(u.wires, id)
		}
	}
	for _, c := range d.kind.Carries {
		if back := wires[c.Return]; back != "" {
			k := slices.IndexFunc(d.h.Wires, func(w model.Wire) bool { return w.ID == wires[c.Cavity] })
			d.h.Wires[k].Return = model.Some(back)
		}
	}
	for r := range d.kind.Carries {
		if u := units[r]; u != nil && u.rows[0] == r {
			d.unit(n, u)
		}
	}
}

// connect gives a wire of a row its end at the connector, where there is one and it has room.
func (d *devices) connect(w *model.Wire, c catalogue.DeviceCavity) {
	term, ok := d.farEnd(c)
	if !ok {
		return
	}
	if got, ok := d.cavities(term, w.Spec, w.Size, 1); ok {
		w.From = model.Some(d.s.H.Terminations[term].ID + ":" + got[0])
	}
}

// shortOf is what a row of a kind carries, without what follows its comma where no other row
// begins with the same words.
func shortOf(kind catalogue.Device, r int) string {
	word, _, _ := strings.Cut(kind.Carries[r].What, ",")
	for k, c := range kind.Carries {
		if other, _, _ := strings.Cut(c.What, ","); k != r && other == word {
			return kind.Carries[r].What
		}
	}
	return word
}
