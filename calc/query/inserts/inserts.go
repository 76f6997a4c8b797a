package inserts

import (
	"cmp"
	"maps"
	"slices"

	"contralay/calc/phase/ends"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Answer is which arrangements take what is wanted, and what is said where they do not.
type Answer struct {
	Fits      []Fit     // small shells first; those with a seal that does not suit come after all others
	Kinds     []Kind    // what was judged, in the order it was asked for
	None      []Refused // wires that no contact of an arrangement takes
	Nearest   *Near     // where nothing takes it: the arrangement that takes most, if any takes one
	NotJudged []string  // arrangements with contacts that no catalogue has
	Contacts  []string  // those contacts
}

// Kind is so many of one wire, drain or spare.
type Kind struct {
	Says   string // "22 AWG", "2.9 mm": the wire, that of a drain's unit, that which a spare is for
	For    Role
	Count  int
	ByOver bool // its gauge is not known: only the seal was judged
	Unread bool // the catalogue lacks its size: neither was judged, or the seal alone
	OverMM unit.Millimetre
	Over   catalogue.Origin // where OverMM comes from
}

// Fit is an arrangement that takes everything.
type Fit struct {
	Insert catalogue.Insert
	Goes   []Goes  // every wire, in the order it was asked for
	Left   []Left  // what it leaves free, small contacts first; sizes that are full too
	Free   int     // cavities left in all
	Seals  []Goes  // those whose seal does not suit
	Unseen []Goes  // those of which the catalogue knows no seal
	Larger *Larger // what the next larger shell buys; nil where there is none
}

// Goes is so many wires of a kind in contacts of a size.
type Goes struct {
	Kind
	Contact catalogue.Contact
}

// Left is the cavities of a contact size that are left.
type Left struct {
	Size  string
	Count int
}

// Larger is the arrangement that leaves most in the next larger shell.
type Larger struct {
	ID    string
	Shell int
	More  int // cavities that it leaves more
}

// Refused is a kind that no contact takes.
type Refused struct {
	Kind
	Thick bool // too thick for the barrel of the largest contact, and
	Thin  bool // too thin for that of the smallest; neither: no seal takes it
}

// Near is the arrangement that takes most of what is wanted.
type Near struct {
	Insert catalogue.Insert
	Lacks  []Kind // what finds no place in it
}

// Rank judges every arrangement of the catalogue.
func Rank(cat *catalogue.Catalogue, w Want) Answer {
	ks := kinds(cat, w)
	var a Answer
	for _, k := range ks {
		a.Kinds = append(a.Kinds, k.public(k.count))
	}
	unknown, offered := map[string]bool{}, map[string]bool{}
	placed := 0
	for _, id := range cat.InsertIDs() {
		i, _ := cat.Insert(id)
		rooms, missing := roomsOf(cat, i)
		if len(missing) > 0 {
			a.NotJudged = append(a.NotJudged, id)
			for _, size := range missing {
				unknown[size] = true
			}
			continue
		}
		for _, r := range rooms {
			offered[r.contact.Size] = true
		}
		got, n := assign(cat, ks, rooms)
		if n == total(ks) {
			a.Fits = append(a.Fits, fitOf(cat, i, ks, rooms, got))
			continue
		}
		if n > placed || n == placed && n > 0 && smaller(i, a.Nearest.Insert) {
			placed, a.Nearest = n, &Near{Insert: i, Lacks: lacking(ks, got)}
		}
	}
	if len(a.Fits) > 0 {
		a.Nearest = nil
	}
	a.None = refused(cat, ks, offered)
	a.Contacts = slices.Sorted(maps.Keys(unknown))
	slices.SortStableFunc(a.Fits, func(x, y Fit) int {
		return cmp.Or(cmp.Compare(one(len(x.Seals) > 0), one(len(y.Seals) > 0)), cmp.Compare(x.Insert.Shell, y.Insert.Shell),
			cmp.Compare(x.Free, y.Free), Better(cat, x.Insert, y.Insert))
	})
	larger(a.Fits)
	return a
}

// Better orders arrangements of which nothing else decides: those qualified in every series first, then
// those that lack it in fewer, then those whose contacts carry more.
func Better(cat *catalogue.Catalogue, x, y catalogue.Insert) int {
	return cmp.Or(cmp.Compare(len(x.NotQualified), len(y.NotQualified)), cmp.Compare(weakest(cat, y), weakest(cat, x)))
}

// weakest is the least current that a contact of an arrangement is tested with; 0 where one is not
// known.
func weakest(cat *catalogue.Catalogue, i catalogue.Insert) unit.Ampere {
	var least unit.Ampere
	for n, g := range i.Contacts {
		c, _ := cat.Contact(g.Size)
		if n == 0 || c.MaxA < least {
			least = c.MaxA
		}
	}
	return least
}

func smaller(x, y catalogue.Insert) bool {
	return cmp.Or(cmp.Compare(x.Shell, y.Shell), cmp.Compare(x.Count(), y.Count())) < 0
}

func total(ks []kind) int {
	n := 0
	for _, k := range ks {
		n += k.count
	}
	return n
}

func (k kind) public(count int) Kind {
	return Kind{Says: k.says, For: k.role, Count: count, ByOver: k.byOver, Unread: k.unread, OverMM: k.over, Over: k.from}
}

// Takes reports whether any contact of an arrangement takes a wire.
func Takes(cat *catalogue.Catalogue, x Wire) bool {
	x.Count = 1
	return len(Rank(cat, Want{Wires: []Wire{x}}).Fits) > 0
}

// roomsOf are the contacts of an arrangement, small to large; missing are sizes that no catalogue has.
func roomsOf(cat *catalogue.Catalogue, i catalogue.Insert) (out []room, missing []string) {
	for _, g := range i.Contacts {
		c, known := cat.Contact(g.Size)
		if !known {
			missing = append(missing, g.Size)
			continue
		}
		if at := slices.IndexFunc(out, func(r room) bool { return r.contact.Size == g.Size }); at >= 0 {
			out[at].count += g.Count
			continue
		}
		out = append(out, room{c, g.Count})
	}
	slices.SortStableFunc(out, func(x, y room) int {
		return cmp.Or(cmp.Compare(x.contact.WellBoreMM, y.contact.WellBoreMM), cmp.Compare(x.contact.MaxA, y.contact.MaxA))
	})
	return out, missing
}

func fitOf(cat *catalogue.Catalogue, i catalogue.Insert, ks []kind, rooms []room, got [][]int) Fit {
	f := Fit{Insert: i}
	for k := range ks {
		for r := range rooms {
			if got[k][r] == 0 {
				continue
			}
			g := Goes{ks[k].public(got[k][r]), rooms[r].contact}
			f.Goes = append(f.Goes, g)
			switch {
			case taking(cat, rooms[r].contact, ks[k]) == close:
				f.Seals = append(f.Seals, g)
			case ks[k].over > 0 && rooms[r].contact.SealMaxMM == 0:
				f.Unseen = append(f.Unseen, g)
			}
		}
	}
	for r := range rooms {
		n := rooms[r].count
		for k := range ks {
			n -= got[k][r]
		}
		f.Left = append(f.Left, Left{rooms[r].contact.Size, n})
		f.Free += n
	}
	return f
}

func lacking(ks []kind, got [][]int) []Kind {
	var out []Kind
	for k := range ks {
		n := ks[k].count
		for _, g := range got[k] {
			n -= g
		}
		if n > 0 {
			out = append(out, ks[k].public(n))
		}
	}
	return out
}

// refused are the kinds that no contact of an arrangement takes.
func refused(cat *catalogue.Catalogue, ks []kind, offered map[string]bool) []Refused {
	var out []Refused
	for _, k := range ks {
		taken, thick, thin := false, true, true
		for size := range offered {
			c, _ := cat.Contact(size)
			taken = taken || taking(cat, c, k) != not
			tooThick, tooThin := ends.InBarrel(cat, c, k.area)
			thick, thin = thick && tooThick, thin && tooThin && k.area > 0
		}
		if !taken {
			out = append(out, Refused{k.public(k.count), thick, thin})
		}
	}
	return out
}

// larger says of each fit what the next larger shell that takes everything as well buys: an
// arrangement of the same contact sizes where it has one, else the one that leaves most.
func larger(fits []Fit) {
	for k := range fits {
		f := &fits[k]
		alike := false
		for n := range fits {
			g := &fits[n]
			more, same := g.Free-f.Free, sameSizes(f, g)
			if g.Insert.Shell <= f.Insert.Shell || more <= 0 || len(g.Seals) > len(f.Seals) {
				continue
			}
			l := f.Larger
			if l == nil || g.Insert.Shell < l.Shell || g.Insert.Shell == l.Shell && (same && !alike || same == alike && more > l.More) {
				f.Larger, alike = &Larger{g.Insert.ID, g.Insert.Shell, more}, same
			}
		}
	}
}

func sameSizes(f, g *Fit) bool {
	return slices.EqualFunc(f.Left, g.Left, func(a, b Left) bool { return a.Size == b.Size })
}
