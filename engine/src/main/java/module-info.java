/** Physics and statistics of things that cool down, free of any office. */
@org.jspecify.annotations.NullMarked
@SuppressWarnings("requires-automatic") // Commons Math 3 predates modules
module org.snugsheet.engine {
    requires static org.jspecify;
    requires commons.math3;

    exports org.snugsheet.engine;
    exports org.snugsheet.engine.quantity;
    exports org.snugsheet.engine.water;
    exports org.snugsheet.engine.heat;
    exports org.snugsheet.engine.reading;
    exports org.snugsheet.engine.cooling;
    exports org.snugsheet.engine.comparison;
    exports org.snugsheet.engine.insulation;
    exports org.snugsheet.engine.winter;
    exports org.snugsheet.engine.clothing;
    exports org.snugsheet.engine.surface;
    exports org.snugsheet.engine.jar;
    exports org.snugsheet.engine.lesson;
    exports org.snugsheet.engine.slips;
    exports org.snugsheet.engine.fairness;
    exports org.snugsheet.engine.summary;
}
