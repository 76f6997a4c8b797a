package add

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/formula/join"
	"contralay/calc/phase/ends"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

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
			d.chose("splice", d.terms, "Cavity %s of %s is twisted with other wires of its device: each has a feed of its own, without a "+
				"splice",
				c.Cavity, span(d.terms))
			continue
		case !isBreakout:
			d.tell(Missing, "splice", nil, Taken{},
				"A splice lies at a breakout, and the legs hang on none: each device has a feed of its own")
			return
		}
		if f := d.planFeed(r, d.ask.Count); d.joins(r, f, d.ask.Count) {
			d.feed(r, f)
		} else {
			d.tellNoSplice(r, f)
		}
	}
}

// plannedFeed is the wire that feeds a splice: what flows in it, and what it is.
type plannedFeed struct {
	shared
	is      wireSize
	allowed unit.Ampere // what the table gives to its size; 0 where it was not chosen by it
	bears   bool        // it is thick enough
}

// planFeed chooses the wire that feeds n devices through one row.
func (d *devices) planFeed(r, n int) plannedFeed {
	c := d.kind.Carries[r]
	f := plannedFeed{shared: share(c, n), is: d.sizeOf(r), bears: true}
	if !d.rated(c) {
		return f
	}
	size, allowed, bears := feedSize(f.rms(), c.Size)
	if d.ask.Size == "" {
		f.is, f.allowed, f.bears = d.made(d.spec, size), allowed, bears
	} else if given, isAWG := catalogue.AWGNumber(d.ask.Size); isAWG {
		need, _ := catalogue.AWGNumber(size)
		f.bears = bears && given <= need
	}
	return f
}

// joins reports whether some splice of the catalogue takes a feed and the wires to n devices; true,
// too, where that is not known.
func (d *devices) joins(r int, f plannedFeed, n int) bool {
	mils := func(is wireSize) unit.CircularMil {
		e, _ := d.s.Cat.Wire(is.spec, is.size)
		return unit.CircularMil(math.Round(float64(e.AreaMM2.CircularMils())))
	}
	parts := ends.SpliceParts(d.s)
	one, each := mils(f.is), mils(d.sizeOf(r))
	near, far := join.Side{one}, slices.Repeat(join.Side{each}, n)
	return len(parts) == 0 || one == 0 || each == 0 || slices.ContainsFunc(parts, func(p join.Part) bool { return p.Fits(near, far) })
}

// tellNoSplice tells that no splice takes all the wires of a row, and how many one would take.
func (d *devices) tellNoSplice(r int, f plannedFeed) {
	most := d.ask.Count - 1
	for most > 1 && !d.joins(r, d.planFeed(r, most), most) {
		most--
	}
	fewer := ""
	if most > 1 {
		fewer = ". Up to " + strconv.Itoa(most) + " at a time have a splice"
	}
	d.chose("splice", d.terms, "No splice of the catalogue joins %s with %d of %s: each device has a feed of its own%s",
		model.SizeWords(f.is.size), d.ask.Count, model.SizeWords(d.sizeOf(r).size), fewer)
}

// feed makes the splice of one row and the wire that feeds it.
func (d *devices) feed(r int, f plannedFeed) {
	c := d.kind.Carries[r]
	id := d.h.FreeID("S")
	d.h.Splices = append(d.h.Splices, model.Splice{ID: id, At: d.ask.At})
	d.out.Splices = append(d.out.Splices, id)
	d.splice[r] = id
	w := d.row(r)
	w.Spec, w.Size = f.is.spec, f.is.size
	if d.rated(c) {
		w.Amps, w.OnS, w.PeriodS, w.RestA = model.Opt[unit.Ampere]{}, model.Opt[unit.Second]{}, model.Opt[unit.Second]{},
			model.Opt[unit.Ampere]{}
		f.put(&w)
	}
	w.Signal = model.Some(feedName(c, shortOf(d.kind, r)))
	w.To = model.Some(id)
	d.connect(&w, c)
	wire := d.wire(w)
	d.chose("splice", []string{id}, "%s at %s joins the feeds of %s: give its sleeve a place clear of the breakout", id, d.ask.At,
		span(d.terms))
	if f.is.says != "" {
		d.chose("spec", []string{wire}, "%s: %s", wire, f.is.says)
	}
	if !d.rated(c) {
		return
	}
	from := Taken{Standing: worst(c.AmpsIs, duty(c)).Standing, Worked: true, From: c.AmpsIs.From}
	d.tell(Chosen, "amps", []string{wire}, from, "%s feeds %s: %s", wire, id, f.words)
	from.From = "A1"
	switch {
	case !f.bears && d.ask.Size != "":
		d.tell(Missing, "size", []string{wire}, from, "%s carries an RMS current of %s A: %s is too thin for it in a full bundle", wire,
			plainAmps(f.rms()), model.SizeWords(w.Size))
	case !f.bears:
		d.tell(Missing, "size", []string{wire}, from, "%s carries more than any size of the table may: use several feeds", wire)
	case d.ask.Size == "":
		d.tell(Chosen, "size", []string{wire}, from, "%s: %s %s. Its size may carry %s A in a full bundle at 70 C", wire, w.Spec,
			model.SizeWords(w.Size), plainAmps(f.allowed))
	}
}

// feedName is the signal of a feed: "Injectors feed", or "Reference 5 V" where the word of the
// feed says it all.
func feedName(c catalogue.DeviceCavity, what string) string {
	if strings.HasPrefix(c.Feed, what) {
		return capital(c.Feed)
	}
	return capital(c.Feed) + " " + what
}

// duty is how far the duty of a row can be trusted; one that is always on has none.
func duty(c catalogue.DeviceCavity) Taken {
	if c.OnS == 0 {
		return c.AmpsIs
	}
	return c.DutyIs
}
