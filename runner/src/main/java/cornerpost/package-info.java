/** Cornerpost: from an owner-builder's choices to a costed, dated plan of a container home. */
package cornerpost;
