package built

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"contralay/calc/sheet"
	"contralay/model"
)

// Say tells, once for each build, what the sheet has otherwise since; and once what of a build
// cannot be compared. A build that was finished at another revision stays as it is: that is
// only noted.
func Say(s *sheet.Sheet) {
	var facts []Fact
	for k := range s.H.Builds {
		b := &s.H.Builds[k]
		if len(b.Keys())+len(begun(b)) == 0 {
			continue
		}
		if facts == nil {
			facts = Facts(s)
		}
		c := since(s, b, facts)
		where := "serial " + b.Serial
		if b.Did(HoldLoaded) && b.Revision.V != s.H.Head.Revision.V {
			c.Differences = slices.DeleteFunc(c.Differences, func(d Difference) bool { return len(d.Steps) == 0 })
			if len(c.Differences) > 0 {
				s.SayLike(sheet.Note, "built.since", where, "finished",
					fmt.Sprintf("It was finished at revision %s and stays so. Otherwise now: %s",
						b.Revision.Or("-"), c.named()))
			}
			continue
		}
		if len(c.Differences) > 0 {
			level := sheet.Warn
			if c.Again == 0 {
				level = sheet.Note
			}
			s.SayLike(level, "built.since", where, "", "Since you built it: "+c.Says()+". The bench run asks what to do")
			continue
		}
		if c.Unknown > 0 {
			s.SayLike(sheet.Note, "built.unknown", where, "unknown", sheet.Capital(unknown(c.Unknown))+
				": only the revision is compared, and it is the same")
		}
	}
}

// mostSaid is how many differences a line names before it counts the rest.
const mostSaid = 3

// Says is a comparison in one line: "wire 101 is 20 AWG yellow, was 22 AWG brown, 750 mm; L1 is
// 100 mm longer: 4 steps to do again".
func (c Comparison) Says() string {
	switch text := c.named(); c.Again {
	case 0:
		return text + ": no step to do again"
	case 1:
		return text + ": 1 step to do again"
	default:
		return fmt.Sprintf("%s: %d steps to do again", text, c.Again)
	}
}

// named is what differs, the first few by name.
func (c Comparison) named() string {
	var all []string
	for _, d := range c.Differences[:min(mostSaid, len(c.Differences))] {
		all = append(all, d.Says)
	}
	if n := len(c.Differences) - mostSaid; n > 0 {
		all = append(all, fmt.Sprintf("%d more", n))
	}
	return strings.Join(all, "; ")
}

// Redo takes a difference's steps back, so that they are done again.
func (d Difference) Redo(b *model.Build) {
	for _, key := range d.Again {
		Undo(b, key, d.Says)
	}
	if d.then != nil { // what is done from here on is of this revision
		d.then(b)
	}
}

// Keep keeps a difference as it was built, as a deviation with the name of who decides it: it is
// asked for no more until the sheet changes again.
func (d Difference) Keep(b *model.Build, by, on string) {
	for _, k := range d.keep {
		t := b.TickOf(k.key)
		if t == nil {
			continue
		}
		if k.instead != "" {
			b.Tick(model.Ticked{Key: k.instead, At: t.At, By: t.By, What: t.What, Sheet: model.Some(k.sheet)})
			t = b.TickOf(k.key)
			k.sheet = model.What{} // the sheet has it no more
		}
		t.Sheet = model.Some(k.sheet)
	}
	if d.then != nil {
		d.then(b)
	}
	dev := model.Deviation{At: d.At, Says: d.Built + " is kept: " + d.Says, Steps: d.Steps, By: model.Some(by)}
	if on != "" {
		dev.On = model.Some(on)
	}
	b.Apart = append(b.Apart, dev)
}

// Strike takes deviation number n out; what was kept by it is asked for again.
func Strike(b *model.Build, n int) {
	if n >= len(b.Apart) {
		return
	}
	for _, key := range b.Apart[n].Steps {
		t := b.TickOf(key)
		if t == nil {
			continue
		}
		t.Sheet = model.Opt[model.What]{}
		was := *t
		verb, _, _ := strings.Cut(key, " ")
		parts := verb == "thread" || verb == "shrink" || verb == "wind"
		b.Steps = slices.DeleteFunc(b.Steps, func(o model.Ticked) bool { // the step that it was kept in the place of
			return parts && o.Key != key && strings.HasPrefix(o.Key, verb+" ") && o.Sheet.Set && reflect.DeepEqual(o.What, was.What)
		})
	}
	b.Apart = slices.Delete(b.Apart, n, n+1)
}
