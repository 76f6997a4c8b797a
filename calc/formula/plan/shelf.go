package plan

// shelf hands out what stacks are made of. For a beam it cuts them from large pieces: it makes tens of thousands
// and is done with all of them at once. The exact method keeps some of what it makes for long, and a piece stays in
// memory as long as anything of it is kept: there each is made by itself.
type shelf struct {
	labels []label
	stacks []stack
	counts []int
	piece  int // how many are made at once; 0: one
}

// beamPiece is how many a beam makes at once.
const beamPiece = 128

func (h *shelf) label() *label {
	if len(h.labels) == 0 {
		h.labels = make([]label, max(1, h.piece))
	}
	l := &h.labels[0]
	h.labels = h.labels[1:]
	return l
}

func (h *shelf) stack() *stack {
	if len(h.stacks) == 0 {
		h.stacks = make([]stack, max(1, h.piece))
	}
	o := &h.stacks[0]
	h.stacks = h.stacks[1:]
	return o
}

// ints is n counts, all 0.
func (h *shelf) ints(n int) []int {
	if len(h.counts) < n {
		h.counts = make([]int, max(8*h.piece, n))
	}
	c := h.counts[:n:n]
	h.counts = h.counts[n:]
	return c
}
