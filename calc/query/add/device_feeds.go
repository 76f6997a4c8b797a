package add

import (
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"strings"
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
	sum, w := share(c, d.ask.Count), d.row(r)
	is, allowed, bears := d.sizeOf(r), unit.Ampere(0), true
	if d.rated(c) {
		w.Amps, w.OnS, w.PeriodS, w.RestA = model.Opt[unit.Ampere]{}, model.Opt[unit.Second]{}, model.Opt[unit.Second]{},
			model.Opt[unit.Ampere]{}
		sum.put(&w)
		var size string
		size, allowed, bears = feedSize(sum.rms(), c.Size)
		if d.ask.Size == "" {
			is = d.made(d.spec, size)
		} else if n, isAWG := catalogue.AWGNumber(d.ask.Size); isAWG {
			need, _ := catalogue.AWGNumber(size)
			bears = n <= need
		}
	}
	w.Spec, w.Size = is.spec, is.size
	w.Signal = model.Some(feedName(c, shortOf(d.kind, r)))
	w.To = model.Some(id)
	d.connect(&w, c)
	wire := d.wire(w)
	d.chose("splice", []string{id}, "%s at %s joins the feeds of %s: give its sleeve a place clear of the breakout", id, d.ask.At,
		span(d.terms))
	if is.says != "" {
		d.chose("spec", []string{wire}, "%s: %s", wire, is.says)
	}
	if !d.rated(c) {
		return
	}
	from := Taken{Standing: worst(c.AmpsIs, duty(c)).Standing, Worked: true, From: c.AmpsIs.From}
	d.tell(Chosen, "amps", []string{wire}, from, "%s feeds %s: %s", wire, id, sum.words)
	from.From = "A1"
	switch {
	case !bears && d.ask.Size != "":
		d.tell(Missing, "size", []string{wire}, from, "%s carries an RMS current of %s A: %s is too thin for it in a full bundle", wire,
			plainAmps(sum.rms()), model.SizeWords(w.Size))
	case !bears:
		d.tell(Missing, "size", []string{wire}, from, "%s carries more than any size of the table may: use several feeds", wire)
	case d.ask.Size == "":
		d.tell(Chosen, "size", []string{wire}, from, "%s: %s %s. Its size may carry %s A in a full bundle at 70 C", wire, w.Spec,
			model.SizeWords(w.Size), plainAmps(allowed))
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
