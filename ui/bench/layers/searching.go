package layers

import (
	"fmt"
	"slices"
	"time"

	"contralay/calc/phase/bundle"
	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers/ways"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// After the answer at once the search for better lay-ups goes on beside the screen, in slices, while the
// lay-up is in front. What it finds comes to the end of the page, so that no row moves.

// searches is the search of the branch in hand, and how long each branch has been searched.
type searches struct {
	now  *searching
	used map[string]time.Duration // by the branch's question
}

// searching is one search. A slice of it runs at a time, and nothing else touches on meanwhile.
type searching struct {
	key   string           // of the question it is about
	on    *planning.Search // nil until its first slice
	used  time.Duration
	most  time.Duration  // it rests when it has used so much
	last  sheet.Proposal // what the last slice had found
	ended bool
}

// How long a slice is: what waits for it waits so long. Where there is no clock a slice is so much effort.
const (
	sliceTime   = 40 * time.Millisecond
	sliceEffort = 4_000
)

// barW is the width of the row's bar with its words.
const barW = 28

// question is the planning question of the branch in hand, and the options that are known; false where
// nothing is there to be searched.
func question(m *desk.Model) (key string, p sheet.Proposal, ok bool) {
	_, b, ok := m.BranchHere()
	if !ok || b.Make != model.MakeLaid || len(b.Layers) == 0 {
		return "", p, false
	}
	key = bundle.PlanKey(m.Sheet, m.Branch)
	p, ok = m.Sheet.Proposals[key]
	return key, p, ok && len(p.Options) > 0
}

// here is the search of the branch in hand; nil where none was begun. A changed branch is another question,
// and the search of what it was is dropped.
func here(m *desk.Model, key string) *searching {
	all := desk.State[searches](m)
	if all.now != nil && all.now.key == key {
		return all.now
	}
	return nil
}

// runs reports whether a search goes on.
func (s *searching) runs() bool { return s != nil && !s.ended && s.used < s.most }

// SearchOn is the next slice of the search of the branch in hand.
func SearchOn(m *desk.Model) (desk.Work, bool) {
	key, p, ok := question(m)
	if !ok || p.Reach.Ended {
		return desk.Work{}, false
	}
	all := desk.State[searches](m)
	one := here(m, key)
	if one == nil {
		if all.used[key] >= m.Cfg.Search {
			return desk.Work{}, false
		}
		one = begin(m, key, m.Cfg.Search)
	}
	if !one.runs() {
		return desk.Work{}, false
	}
	s, i, now := m.Sheet, m.Branch, m.Cfg.Now
	return desk.Work{Key: "search\x00" + key, Do: func() func(m *desk.Model) {
		took, news := one.slice(s, i, now)
		found := one.on.Proposal()
		return func(m *desk.Model) { one.take(m, found, took, news) }
	}}, true
}

// begin makes a search of a question the one that goes on: from where its answer at once left it, where that is
// still at hand.
func begin(m *desk.Model, key string, most time.Duration) *searching {
	all, from := desk.State[searches](m), desk.State[desk.Begun](m)
	all.now = &searching{key: key, most: most}
	if from.Key == key {
		all.now.on = from.Search
	}
	*from = desk.Begun{}
	return all.now
}

// slice searches on for a while.
func (s *searching) slice(of *sheet.Sheet, branch int, now func() time.Time) (took time.Duration, news bool) {
	var from time.Time
	if now != nil {
		from = now()
	}
	if s.on == nil {
		s.on, news = planning.Begin(of, branch), true
	}
	for {
		found, more := s.on.Run(sliceEffort)
		news = news || found
		if now == nil {
			return sliceTime, news
		}
		if took = now().Sub(from); took >= sliceTime || !more {
			return took, news
		}
	}
}

// take brings in what came of a slice. The lay-up in use stays, and so does what is proposed.
func (s *searching) take(m *desk.Model, found sheet.Proposal, took time.Duration, news bool) {
	all := desk.State[searches](m)
	if all.now != s { // the branch was changed meanwhile
		return
	}
	s.used += took
	if s.last, s.ended = found, found.Reach.Ended; s.ended {
		s.on = nil // tens of megabytes that nobody needs any more
	}
	if all.used == nil {
		all.used = map[string]time.Duration{}
	}
	all.used[s.key] = max(all.used[s.key], s.used)
	if rests := !s.runs(); news || rests {
		s.adopt(m, found, rests)
	}
}

// adopt puts what was found behind the options that are known.
func (s *searching) adopt(m *desk.Model, found sheet.Proposal, rests bool) {
	known, ok := m.Sheet.Proposals[s.key]
	if !ok {
		return
	}
	out, more := planning.Extend(known, found)
	if more || rests && out.Reach != known.Reach {
		planning.Adopt(m.Sheet, s.key, out)
		m.Rebuild()
	}
}

// goOn searches the branch in hand for as long again.
func goOn(m *desk.Model) {
	key, _, ok := question(m)
	if !ok {
		return
	}
	all, again := desk.State[searches](m), max(m.Cfg.Search, sliceTime)
	if one := here(m, key); one != nil {
		one.most = one.used + again
	} else {
		begin(m, key, all.used[key]+again) // it begins anew, and so has to go further
	}
	m.Tell("searching. Enter on the row stops it")
}

// rest stops the search of the branch in hand where it is.
func rest(m *desk.Model) {
	key, _, ok := question(m)
	one := here(m, key)
	if !ok || one == nil {
		return
	}
	if one.most = one.used; one.used > 0 {
		one.adopt(m, one.last, true)
	}
	m.Tell("the search rests. It keeps what it has found")
}

// searchRow says how far the search for better lay-ups has come.
func searchRow(m *desk.Model, key string, p sheet.Proposal) desk.Row {
	one := here(m, key)
	waits := one == nil && !p.Reach.Ended && desk.State[searches](m).used[key] < m.Cfg.Search
	row := desk.Row{Key: "search"}
	best, _ := p.Cheapest()
	switch gain := unsure(m, p); {
	case one.runs() || waits:
		share := 0.0
		if one != nil {
			share = float64(one.used) / float64(one.most)
		}
		note := foundNote(m, p)
		row.Text = m.Theme.Progress("  searching", share, note, min(barW+draw.Width(note), m.ListWidth()-4))
		row.Detail = "Enter stops the search. Better lay-ups come to the end of the page"
		row.Enter = rest
		row.Does = "stop"
	case p.Reach.Proven:
		row.Text = fmt.Sprintf("  no better lay-up exists than %c", p.Letter(best))
		row.Detail = "Weighed by OD, filler, mixed sizes and buried wires"
		if p.Reach.Thinnest {
			row.Detail += fmt.Sprintf(". None is thinner than %c", p.Letter(leastOD(p)))
		}
	case p.Reach.Ended && p.Reach.Thinnest:
		row.Text = fmt.Sprintf("  no thinner lay-up exists than %c", p.Letter(leastOD(p)))
		row.Detail = "All that keep the rules and preferences were tried" + gain
	case p.Reach.Ended:
		row.Text = "  searched to the end"
		row.Detail = "A longer search finds nothing more" + gain
	default:
		row.Text = "  not every lay-up was tried"
		if note := foundNote(m, p); note != "" {
			row.Text = "  not all were tried, " + note // a list of 46 cells has room for no more
		}
		row.Detail = "Enter searches on" + gain
		row.Enter = goOn
		row.Does = "search on"
	}
	return row
}

// unsure is how much better than the best a lay-up could be at most, as far as is known.
func unsure(m *desk.Model, p sheet.Proposal) string {
	best, ok := p.Cheapest()
	if !ok || p.Reach.Least <= 0 {
		return ""
	}
	gap := float64(p.Options[best].Cost - p.Reach.Least)
	return fmt.Sprintf(". By the shop's weights %s %s is left to gain at most", m.Sys.Fine(unit.Millimetre(gap)), m.Sys.Name())
}

// leastOD is the option of least OD that leaves no more limits than the cheapest.
func leastOD(p sheet.Proposal) int {
	k, _ := p.Cheapest()
	for j, o := range p.Options {
		if o.Plan.Relaxed == p.Options[k].Plan.Relaxed && o.Plan.Over < p.Options[k].Plan.Over {
			k = j
		}
	}
	return k
}

// foundNote offers what the search has found since: nothing is swapped under the eyes.
func foundNote(m *desk.Model, p sheet.Proposal) string {
	if _, ok := p.Best(); !ok {
		return ""
	}
	in := p.Plain
	if k := slices.IndexFunc(p.Options, func(o sheet.Option) bool { return ways.UsesOption(m, o) }); k >= 0 {
		in = k
	}
	best := in
	for k := p.Shown; k < len(p.Options); k++ {
		o, b := &p.Options[k], &p.Options[best]
		if len(o.Spares) == 0 && (o.Plan.Relaxed < b.Plan.Relaxed || o.Plan.Relaxed == b.Plan.Relaxed && o.Cost < b.Cost) {
			best = k
		}
	}
	switch n := len(p.Options) - p.Shown; {
	case best != in:
		return fmt.Sprintf("%c is %s", p.Letter(best), gainOf(m, p.Options[in], p.Options[best]))
	case n > 0:
		return fmt.Sprintf("%d more below", n)
	}
	return ""
}

// gainOf is what one option has better than another, in a few words.
func gainOf(m *desk.Model, was, is sheet.Option) string {
	if thinner := was.Plan.Over - is.Plan.Over; m.Sys.Diameter(was.Plan.Over) != m.Sys.Diameter(is.Plan.Over) && thinner > 0 {
		return fmt.Sprintf("%s %s thinner", m.Sys.Diameter(thinner), m.Sys.Name())
	}
	if n := was.Plan.Fillers - is.Plan.Fillers; n > 0 {
		return "better by " + words.Plural(n, "filler", "fillers")
	}
	return "better"
}

// foundRows are the lay-ups that came since the page's options were listed, at the end of the page.
func foundRows(m *desk.Model, w int) []desk.Row {
	k, any := ways.Of(m, ways.LayupID)
	if !any {
		return nil
	}
	t := ways.MakeColumns(m, "", ways.Decides, tableName, w)
	var out []desk.Row
	for n, one := range k.Ways {
		if one.Found {
			out = append(out, layupRow(m, k, n, t))
		}
	}
	return out
}
