package inserts

import (
	"math"

	"contralay/calc/phase/ends"
	"contralay/model/catalogue"
)

// suits is how a contact takes a kind of wire.
type suits uint8

const (
	not   suits = iota
	close       // outside a seal, its range or the wire's diameter being from memory
	well
)

// taking is how a contact takes a kind. What the catalogue does not know is no reason to refuse.
func taking(cat *catalogue.Catalogue, c catalogue.Contact, k kind) suits {
	if k.area > 0 {
		if thick, thin := ends.InBarrel(cat, c, k.area); thick || thin {
			return not
		}
	}
	switch {
	case k.byOver && (k.over == 0 || c.SealMaxMM == 0):
		return not // nothing is left to judge it by
	case k.over == 0 || c.SealMaxMM == 0:
		return well
	case k.over >= c.SealMinMM && k.over <= c.SealMaxMM:
		return well
	case k.byOver || !remembered(c.SealStanding) && !remembered(k.from.Standing):
		return not
	}
	return close
}

// remembered reports whether a figure is from memory, so that nothing is refused for it alone.
func remembered(s catalogue.Standing) bool { return s == catalogue.Memory || s == "" }

// room is the cavities of one contact size.
type room struct {
	contact catalogue.Contact
	count   int
}

// The price of a place: seals that do not suit count before everything, then each wire goes to the
// smallest contact that takes it.
const outsideSeal = 1 << 20

// assign puts as many wires as there are places for into the contacts, at the least price: got[k][r]
// of kind k go to room r. Rooms stand small to large. It is a flow of least cost, sent one cheapest
// way at a time, so it is exact: a wire that has a place moves on where that makes one for another.
func assign(cat *catalogue.Catalogue, ks []kind, rooms []room) (got [][]int, placed int) {
	price := make([][]int, len(ks))
	got = make([][]int, len(ks))
	for k := range ks {
		price[k], got[k] = make([]int, len(rooms)), make([]int, len(rooms))
		for r := range rooms {
			switch taking(cat, rooms[r].contact, ks[k]) {
			case not:
				price[k][r] = -1
			case close:
				price[k][r] = outsideSeal + r
			case well:
				price[k][r] = r
			}
		}
	}
	left := make([]int, len(ks))
	for k := range ks {
		left[k] = ks[k].count
	}
	free := make([]int, len(rooms))
	for r := range rooms {
		free[r] = rooms[r].count
	}
	for {
		way, many := cheapest(price, got, left, free)
		if many == 0 {
			return got, placed
		}
		for n := 0; n+1 < len(way); n++ { // kind, room, kind, room …
			if n%2 == 0 {
				got[way[n]][way[n+1]] += many
			} else {
				got[way[n+1]][way[n]] -= many
			}
		}
		left[way[0]] -= many
		free[way[len(way)-1]] -= many
		placed += many
	}
}

// cheapest is the cheapest way from a kind with wires left to a room with places free: it goes to a
// room, and from there on with a kind that has wires in it. many is how many can go that way.
func cheapest(price, got [][]int, left, free []int) (way []int, many int) {
	const far = math.MaxInt / 4
	kinds, rooms := len(left), len(free)
	toKind, toRoom := make([]int, kinds), make([]int, rooms)
	fromRoom, fromKind := make([]int, kinds), make([]int, rooms)
	for k := range toKind {
		toKind[k], fromRoom[k] = far, -1
		if left[k] > 0 {
			toKind[k] = 0
		}
	}
	for r := range toRoom {
		toRoom[r], fromKind[r] = far, -1
	}
	for range kinds + rooms { // no cheapest way is longer
		changed := false
		for k := range kinds {
			for r := range rooms {
				if price[k][r] < 0 {
					continue
				}
				if d := toKind[k] + price[k][r]; d < toRoom[r] { // never from one that is far
					toRoom[r], fromKind[r], changed = d, k, true
				}
				if d := toRoom[r] - price[k][r]; got[k][r] > 0 && toRoom[r] < far && d < toKind[k] {
					toKind[k], fromRoom[k], changed = d, r, true
				}
			}
		}
		if !changed {
			break
		}
	}
	end := -1
	for r := range rooms {
		if free[r] > 0 && toRoom[r] < far && (end < 0 || toRoom[r] < toRoom[end]) {
			end = r
		}
	}
	if end < 0 {
		return nil, 0
	}
	many = free[end]
	for r := end; ; {
		k := fromKind[r]
		way = append([]int{k, r}, way...)
		if fromRoom[k] < 0 {
			return way, min(many, left[k])
		}
		r = fromRoom[k]
		many = min(many, got[k][r])
	}
}
