package plan

// shelf hands out what stacks are made of, cut from a few large pieces: a search makes hundreds of thousands.
type shelf struct {
	labels []label
	stacks []stack
	counts []int
}

// shelfPiece is how many are made at once.
const shelfPiece = 128

func (h *shelf) label() *label {
	if len(h.labels) == 0 {
		h.labels = make([]label, shelfPiece)
	}
	l := &h.labels[0]
	h.labels = h.labels[1:]
	return l
}

func (h *shelf) stack() *stack {
	if len(h.stacks) == 0 {
		h.stacks = make([]stack, shelfPiece)
	}
	o := &h.stacks[0]
	h.stacks = h.stacks[1:]
	return o
}

// ints is n counts, all 0.
func (h *shelf) ints(n int) []int {
	if len(h.counts) < n {
		h.counts = make([]int, max(8*shelfPiece, n))
	}
	c := h.counts[:n:n]
	h.counts = h.counts[n:]
	return c
}
