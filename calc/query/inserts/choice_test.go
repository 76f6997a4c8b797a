package inserts

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"contralay/model/catalogue"
	"contralay/model/unit"
)

// own is a catalogue of three gauges, by which barrels are judged, and "own 22" of 1 mm. Its copper is
// that of the gauge: 24 AWG 0.2 mm², 20 AWG 0.5, 16 AWG 1.2. Own 22 has 0.4.
func own(contacts []catalogue.Contact, all ...catalogue.Insert) *catalogue.Catalogue {
	c := &catalogue.Catalogue{Wires: map[catalogue.WireKey]catalogue.Wire{}, Contacts: map[string]catalogue.Contact{},
		Inserts: map[string]catalogue.Insert{}}
	for _, e := range []catalogue.Wire{{Spec: "AS22759/41", Size: "24", AreaMM2: 0.2}, {Spec: "AS22759/41", Size: "20", AreaMM2: 0.5},
		{Spec: "AS22759/41", Size: "16", AreaMM2: 1.2}, {Spec: "own", Size: "22", AreaMM2: 0.4, OverMM: 1, OverStanding: catalogue.House}} {
		c.Wires[e.Key()] = e
	}
	for _, k := range contacts {
		c.Contacts[k.Size] = k
	}
	for _, i := range all {
		for n := range i.Contacts {
			for range i.Contacts[n].Count {
				i.Cavities = append(i.Cavities, fmt.Sprint(len(i.Cavities)+1))
			}
		}
		c.Inserts[i.ID] = i
	}
	return c
}

// How a contact takes a wire, one reason at a time: the barrel, then the seal, whose edges belong to it; a figure from memory, or
// of no standing, refuses nothing.
func TestHowAContactTakesAWire(t *testing.T) {
	house := catalogue.Origin{Standing: catalogue.House}
	memory := catalogue.Origin{Standing: catalogue.Memory}
	seal := func(least, most unit.Millimetre, s catalogue.Standing) catalogue.Contact {
		return catalogue.Contact{Size: "s", SealMinMM: least, SealMaxMM: most, SealStanding: s}
	}
	barrel := catalogue.Contact{Size: "b", LargestAWG: "20", SmallestAWG: "24"} // 0.2 to 0.5 mm²
	for n, c := range []struct {
		contact catalogue.Contact
		kind    kind
		want    suits
	}{
		{barrel, kind{area: 0.4}, well},
		{barrel, kind{area: 0.6}, not}, // above 1.05 of 0.5
		{barrel, kind{area: 0.1}, not},
		{barrel, kind{area: 0.4, over: 9}, well},           // no seal is known
		{barrel, kind{byOver: true, over: 1}, not},         // nor a gauge: nothing is left to judge it by
		{seal(1, 2, ""), kind{byOver: true}, not},          // nor a diameter
		{seal(1, 2, ""), kind{over: 0, from: house}, well}, // of a drain nothing is judged
		{seal(0.5, 1, catalogue.House), kind{over: 1, from: house}, well},
		{seal(0.5, 1, catalogue.House), kind{over: 1, byOver: true, from: house}, well},
		{seal(1, 2, catalogue.House), kind{over: 1, from: house}, well},
		{seal(1, 2, catalogue.House), kind{over: 2, from: house}, well},
		{seal(1, 2, catalogue.House), kind{over: 2.01, from: house}, not},
		{seal(1, 2, catalogue.House), kind{over: 0.99, from: house}, not},
		{seal(1, 2, catalogue.House), kind{over: 2.01, from: memory}, close},
		{seal(1, 2, catalogue.House), kind{over: 2.01}, close}, // of no standing
		{seal(1, 2, catalogue.Memory), kind{over: 0.99, from: house}, close},
		{seal(1, 2, ""), kind{over: 0.99, from: house}, close},
		{seal(1, 2, catalogue.Memory), kind{over: 0.99, byOver: true, from: house}, not}, // the seal alone decides
	} {
		if got := taking(own(nil), c.contact, c.kind); got != c.want {
			t.Errorf("%d: %d, want %d: %+v in %+v", n, got, c.want, c.kind, c.contact)
		}
	}
}

// Up to three kinds and three contacts, drawn by a fixed seed: every way to give each wire a cavity or none is tried. As many find a
// place as can, then as few as can miss their seal, then the contacts are as small as can be.
func TestAssignAgainstEveryWay(t *testing.T) {
	d := rand.New(rand.NewPCG(1, 2))
	moved := 0
	for n := range 400 {
		var ks []kind
		var rooms []room
		for range 1 + d.IntN(3) {
			ks = append(ks, kind{over: unit.Millimetre(1 + d.IntN(4)), count: 1 + d.IntN(2),
				from: catalogue.Origin{Standing: catalogue.House}})
		}
		for range 1 + d.IntN(3) {
			least := 1 + d.IntN(4)
			rooms = append(rooms, room{catalogue.Contact{SealMinMM: unit.Millimetre(least), SealMaxMM: unit.Millimetre(least + d.IntN(3)),
				SealStanding: []catalogue.Standing{catalogue.House, catalogue.House, catalogue.Memory}[d.IntN(3)]}, 1 + d.IntN(2)})
		}
		outside := func(k, r int) bool {
			return ks[k].over < rooms[r].contact.SealMinMM || ks[k].over > rooms[r].contact.SealMaxMM
		}
		var one []int // the kind of each wire
		for k := range ks {
			for range ks[k].count {
				one = append(one, k)
			}
		}
		best := []int{0, 0, 0} // without a place, outside a seal, the numbers of the contacts
		best[0] = len(one) + 1
		free := make([]int, len(rooms))
		for r := range rooms {
			free[r] = rooms[r].count
		}
		var try func(at int, is [3]int)
		try = func(at int, is [3]int) {
			if at == len(one) {
				if slices.Compare(is[:], best) < 0 {
					best = is[:]
				}
				return
			}
			for r := range rooms {
				out := outside(one[at], r)
				if free[r] == 0 || out && rooms[r].contact.SealStanding == catalogue.House {
					continue
				}
				free[r]--
				next := [3]int{is[0], is[1], is[2] + r}
				if out {
					next[1]++
				}
				try(at+1, next)
				free[r]++
			}
			try(at+1, [3]int{is[0] + 1, is[1], is[2]})
		}
		try(0, [3]int{})
		got, placed := assign(own(nil), ks, rooms)
		is := []int{len(one) - placed, 0, 0}
		in, used := 0, make([]int, len(rooms))
		for k := range ks {
			mine, first := 0, true
			for r := range rooms {
				g := got[k][r]
				mine, used[r], in = mine+g, used[r]+g, in+g
				is[2] += g * r
				if outside(k, r) {
					is[1] += g
				}
				if g < 0 || used[r] > rooms[r].count {
					t.Fatalf("%d: %v", n, got)
				}
				if g == 0 && first && !outside(k, r) && rooms[r].count > 0 {
					moved++
				}
				first = first && g == 0
			}
			if mine > ks[k].count {
				t.Fatalf("%d: %d of kind %d, asked are %d", n, mine, k, ks[k].count)
			}
		}
		if in != placed || !slices.Equal(is, best) {
			t.Fatalf("%d: %d in places of %d said; %v, best %v\n%+v\n%+v\n%v", n, in, placed, is, best, ks, rooms, got)
		}
	}
	if moved < 50 { // a kind that could have had a smaller contact gave it to another one
		t.Errorf("only %d had to give way", moved)
	}
}

// a is an arrangement: its name, shell, series that it is not qualified in, and contacts as "s 3".
func a(id string, shell, lacks int, contacts ...string) catalogue.Insert {
	i := catalogue.Insert{ID: id, Shell: shell, NotQualified: make([]string, lacks)}
	for _, text := range contacts {
		var g catalogue.InsertContacts
		fmt.Sscan(text, &g.Size, &g.Count)
		i.Contacts = append(i.Contacts, g)
	}
	return i
}

// In which order arrangements stand and what a larger shell buys, by hand. Contact s carries 5 A, m 7 A; wide is from memory too wide
// for the wire.
func TestOrderOfWhatFits(t *testing.T) {
	contacts := []catalogue.Contact{{Size: "s", WellBoreMM: 1, MaxA: 5}, {Size: "m", WellBoreMM: 2, MaxA: 7},
		{Size: "n", WellBoreMM: 2, MaxA: 6, SealMinMM: 0.5, SealMaxMM: 1},
		{Size: "wide", WellBoreMM: 1, MaxA: 50, SealMinMM: 2, SealMaxMM: 3, SealStanding: catalogue.Memory}}
	for _, c := range []struct {
		name string
		all  []catalogue.Insert
		want string
	}{
		{"fewest free, then qualified, then what the weakest contact carries; a seal that does not suit is last whatever its shell",
			[]catalogue.Insert{a("a", 9, 0, "s 4"), a("b", 9, 0, "s 3"), a("c", 9, 0, "m 3"), a("d", 9, 1, "m 3"), a("e", 9, 2, "m 3"),
				a("f", 9, 0, "m 2", "s 1"), a("g", 9, 0, "s 1", "m 2"), a("h", 5, 0, "wide 2"), a("i", 7, 0, "s 5"), a("j", 9, 0, "m 2",
					"n 1")},
			"i 3; c 1; j 1; b 1; f 1; g 1; d 1; e 1; a 2; h 0 seals 2 > i +3"},
		{"the next larger shell, not the largest, and never one that leaves as few",
			[]catalogue.Insert{a("a", 9, 0, "s 3"), a("b", 9, 0, "s 4"), a("c", 10, 0, "s 3"), a("d", 11, 0, "s 5"), a("e", 13, 0, "s 9")},
			"a 1 > d +2; b 2 > d +1; c 1 > d +2; d 3 > e +4; e 7"},
		{"of one shell that which has the same contacts, then that which leaves most, then the first",
			[]catalogue.Insert{a("a", 9, 0, "s 3"), a("b", 11, 0, "m 9"), a("c", 11, 0, "s 4"), a("d", 11, 0, "s 5"), a("e", 11, 0, "s 5"),
				a("f", 11, 0, "m 4"), a("g", 11, 0, "m 6")},
			"a 1 > d +2; f 2; c 2; d 3; e 3; g 4; b 7"},
		{"where none has the same, that which leaves most",
			[]catalogue.Insert{a("a", 9, 0, "s 3"), a("b", 11, 0, "m 5"), a("c", 11, 0, "m 6"), a("d", 11, 0, "m 4")},
			"a 1 > c +3; d 2; b 3; c 4"},
		{"one with the same contacts before one that leaves more", []catalogue.Insert{a("a", 9, 0, "m 3"), a("b", 11, 0, "m 6"),
			a("c", 11, 0, "s 5"), a("d", 11, 0, "s 8")}, "a 1 > b +3; c 3; b 4; d 6"},
		{"what misses a seal buys nothing for what misses none; for what misses one, the smaller shell of both",
			[]catalogue.Insert{a("a", 9, 0, "s 3"), a("b", 5, 0, "wide 2"), a("c", 7, 0, "wide 5"), a("d", 10, 0, "wide 9")},
			"a 1; b 0 seals 2 > c +3; c 3 seals 2 > d +4; d 7 seals 2"},
		{"one contact size in two groups is one", []catalogue.Insert{a("a", 9, 0, "s 1", "m 1", "s 2")}, "a 2"},
	} {
		var got []string
		for _, f := range Rank(own(contacts, c.all...), Want{Wires: []Wire{{Spec: "own", Size: "22", Count: 2}}}).Fits {
			text := fmt.Sprint(f.Insert.ID, " ", f.Free)
			for _, s := range f.Seals {
				text += fmt.Sprint(" seals ", s.Count)
			}
			if l := f.Larger; l != nil {
				text += fmt.Sprintf(" > %s +%d", l.ID, l.More)
			}
			got = append(got, text)
		}
		if text := strings.Join(got, "; "); text != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, text, c.want)
		}
	}
}

// What one fit says of its contacts: where each wire goes, what is left of each size, small contacts first and of two alike the one that
// carries less, and whose seal nobody knows.
func TestWhereEachGoes(t *testing.T) {
	contacts := []catalogue.Contact{{Size: "big", WellBoreMM: 2, MaxA: 9}, {Size: "less", WellBoreMM: 2, MaxA: 6},
		{Size: "tiny", WellBoreMM: 1, SealMinMM: 0.9, SealMaxMM: 1.1}}
	cat := own(contacts, a("x", 9, 0, "big 2", "less 1", "tiny 2", "big 1"))
	f := Rank(cat, Want{Wires: []Wire{{Spec: "own", Size: "22", Count: 4}}, Drains: []Wire{{Spec: "own", Size: "22", Count: 1}}}).Fits[0]
	words := func(all []Goes) string {
		var out []string
		for _, g := range all {
			out = append(out, fmt.Sprint(g.Count, " ", g.Says, " ", g.For, " in ", g.Contact.Size))
		}
		return strings.Join(out, ", ")
	}
	// Five into tiny 2, less 1, big 3: at the least price two tiny, one less, two big. Of a drain no seal is asked.
	if got := fmt.Sprintf("%v %d", f.Left, f.Free); got != "[{tiny 0} {less 0} {big 1}] 1" {
		t.Error(got)
	}
	sum := map[string]int{}
	for _, g := range f.Goes {
		sum[g.Contact.Size] += g.Count
	}
	if fmt.Sprint(sum) != "map[big:2 less:1 tiny:2]" || len(f.Seals) != 0 {
		t.Errorf("%v: %s", sum, words(f.Goes))
	}
	var unseen []Goes // wires where no seal is known
	for _, g := range f.Goes {
		if g.For == ForWire && g.Contact.Size != "tiny" {
			unseen = append(unseen, g)
		}
	}
	if len(unseen) == 0 || words(f.Unseen) != words(unseen) {
		t.Errorf("%s of %s", words(f.Unseen), words(f.Goes))
	}
}

// The nearest is that which takes most; of two the smaller shell, then the one with fewer cavities, then the first.
func TestNearestArrangement(t *testing.T) {
	contacts := []catalogue.Contact{{Size: "s", WellBoreMM: 1}, {Size: "thick", LargestAWG: "16", SmallestAWG: "16"}}
	for _, c := range []struct {
		want string
		all  []catalogue.Insert
	}{
		{"b lacks 1", []catalogue.Insert{a("a", 9, 0, "s 3"), a("b", 11, 0, "s 4")}},
		{"a lacks 1", []catalogue.Insert{a("a", 11, 0, "s 4"), a("b", 9, 0, "s 3")}},
		{"b lacks 1", []catalogue.Insert{a("a", 11, 0, "s 4"), a("b", 9, 0, "s 4"), a("c", 13, 0, "s 4")}},
		{"b lacks 1", []catalogue.Insert{a("a", 9, 0, "s 4", "thick 2"), a("b", 9, 0, "s 4"), a("c", 9, 0, "s 4", "thick 1")}},
		{"a lacks 1", []catalogue.Insert{a("a", 9, 0, "s 4"), a("b", 9, 0, "s 4")}},
		{"none", []catalogue.Insert{a("a", 9, 0, "thick 9"), a("b", 5, 0, "thick 9")}},
	} {
		got := "none"
		if n := Rank(own(contacts, c.all...), Want{Wires: []Wire{{Spec: "own", Size: "22", Count: 5}}}).Nearest; n != nil {
			got = n.Insert.ID + " lacks"
			for _, k := range n.Lacks {
				got += fmt.Sprint(" ", k.Count)
			}
		}
		if got != c.want {
			t.Errorf("%s, want %s: %+v", got, c.want, c.all)
		}
	}
}

// Why no contact takes a wire: too thick for all, too thin for all, or neither. A contact that stands in no arrangement, or only in
// one that is not judged, does not count.
func TestWhyNoneTakesIt(t *testing.T) {
	fine := catalogue.Contact{Size: "fine", LargestAWG: "24", SmallestAWG: "24"}     // 0.2 mm²
	coarse := catalogue.Contact{Size: "coarse", LargestAWG: "16", SmallestAWG: "16"} // 1.2 mm²
	mid := catalogue.Contact{Size: "mid", LargestAWG: "20", SmallestAWG: "24"}       // 0.2 to 0.5 mm²
	tight := catalogue.Contact{Size: "tight", SealMinMM: 0.5, SealMaxMM: 0.8, SealStanding: catalogue.House}
	w := Wire{Spec: "own", Size: "22", Count: 1} // 0.4 mm², 1 mm
	cat := own([]catalogue.Contact{fine, coarse, mid, tight}, a("F", 9, 0, "fine 1"), a("C", 9, 0, "coarse 1"), a("M", 9, 0, "mid 1"),
		a("T", 9, 0, "tight 1"), a("U", 9, 0, "mid 1", "other 1", "another 1"))
	for _, c := range []struct {
		ids  string
		w    Wire
		want string
	}{
		{"F", w, "thick"}, {"C", w, "thin"}, {"F C", w, "neither"}, {"C F", w, "neither"}, {"M", w, ""}, {"F M C", w, ""},
		{"T", w, "neither"}, {"F T", w, "neither"}, {"C T", w, "neither"}, {"F U", w, "thick"},
		{"C", Wire{OverMM: 1, Count: 1}, "neither"}, // of no gauge: none is too thin for a barrel
	} {
		only := *cat
		only.Inserts = map[string]catalogue.Insert{}
		for _, id := range strings.Fields(c.ids) {
			only.Inserts[id] = cat.Inserts[id]
		}
		answer := Rank(&only, Want{Wires: []Wire{c.w}})
		got := ""
		for _, r := range answer.None {
			switch {
			case r.Thick && r.Thin:
				got += "both"
			case r.Thick:
				got += "thick"
			case r.Thin:
				got += "thin"
			default:
				got += "neither"
			}
		}
		if got != c.want {
			t.Errorf("%s: %q, want %q", c.ids, got, c.want)
		}
		judged := strings.Contains(c.ids, "U")
		if (fmt.Sprint(answer.NotJudged, answer.Contacts) == "[U] [another other]") != judged || judged != (len(answer.NotJudged) > 0) {
			t.Errorf("%s: %v %v", c.ids, answer.NotJudged, answer.Contacts)
		}
	}
}
