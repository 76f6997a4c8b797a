package model

import "slices"

// stride is the way from a place towards the root of its tree.
type stride struct {
	branch int // -1 at the root
	place  string
	deep   int
	root   string
}

// ways roots every tree of a harness, so that the way between two places is found by climbing
// from both, whatever else the harness has; nil where branches close a loop, which the loader
// refuses.
func (x *Index) ways() map[string]stride {
	up := make(map[string]stride, len(x.meet))
	var open []string
	for i := range x.H.Branches {
		root := x.H.Branches[i].From
		if _, is := up[root]; is {
			continue
		}
		up[root] = stride{branch: -1, root: root}
		open = append(open[:0], root)
		for len(open) > 0 {
			at := open[len(open)-1]
			open = open[:len(open)-1]
			for _, b := range x.meet[at] {
				next := x.Other(b, at)
				if b == up[at].branch {
					continue
				}
				if _, is := up[next]; is {
					return nil
				}
				up[next] = stride{b, at, up[at].deep + 1, root}
				open = append(open, next)
			}
		}
	}
	return up
}

// Shared is the place where two branches meet; "" where they do not.
func (x *Index) Shared(a, b int) string {
	p, q := &x.H.Branches[a], &x.H.Branches[b]
	if p.From == q.From || p.From == q.To {
		return p.From
	}
	if p.To == q.From || p.To == q.To {
		return p.To
	}
	return ""
}

// Between returns the branches from one place to another, in walking order; a
// tree has one way at most. ok is false where there is none. From a place to
// itself the way is empty.
func (x *Index) Between(from, to string) (path []int, ok bool) {
	if from == to {
		return nil, true
	}
	if x.up == nil {
		return x.search(from, to)
	}
	a, is := x.up[from]
	b, also := x.up[to]
	if !is || !also || a.root != b.root {
		return nil, false
	}
	var down []int
	for from != to {
		if a.deep >= b.deep {
			path, from = append(path, a.branch), a.place
			a = x.up[from]
		} else {
			down, to = append(down, b.branch), b.place
			b = x.up[to]
		}
	}
	slices.Reverse(down)
	return append(path, down...), true
}

// search is Between where branches close a loop: the first way that is found.
func (x *Index) search(from, to string) (path []int, ok bool) {
	seen := map[string]bool{from: true}
	var walk func(at string) bool
	walk = func(at string) bool {
		if at == to {
			return true
		}
		for _, b := range x.meet[at] {
			next := x.Other(b, at)
			if seen[next] {
				continue
			}
			seen[next] = true
			path = append(path, b)
			if walk(next) {
				return true
			}
			path = path[:len(path)-1]
		}
		return false
	}
	if !walk(from) {
		return nil, false
	}
	return path, true
}
