/** Water: what is measured in it, in which unit and form, and the chemistry and physics behind. Pure. */
package org.tankrounds.water;
