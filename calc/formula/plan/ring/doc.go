// Package ring adds up what the components of one layer take of a turn, by size and number and without laying
// them: a search tests hundreds of thousands of layers, and what a test costs decides how much it can try.
//
// Sizes are numbered thin to thick, and counts are by size. θ is the angle that two neighbours take between their
// centres (lay.NeighbourAngle), in rad; lengths are in mm. Nothing here is lost between two thick ones: only the
// laying itself knows that (lay.Gauge).
package ring
