// Package plan chooses which sizes go into which layer of a laid bundle: a
// centre and layers that hold every component, each closing within the shop's
// limits.
//
// It works on a multiset of diameters and knows nothing of wires or branches. It
// returns every plan that no other beats in fillers, diameter, lumpy layers and
// spares, ranked by cost. Where the search had to leave something out, the plan
// says so (Proven is false); it never returns a plan that breaks a rule without
// saying which (Relaxed).
package plan
