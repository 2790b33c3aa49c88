// SPDX-License-Identifier: Apache-2.0
package sillbook.house;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The compiled classes that the rules are held over, read once. */
final class Classes {
    static final String ROOT = "sillbook";
    static final String OFFENDER_ROOT = "sillbook.house.offender";

    /** Everything that is shipped. */
    static final JavaClasses SHIPPED = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    /** Classes of the test tree that break the rules. */
    static final JavaClasses OFFENDERS = new ClassFileImporter().importPackages(OFFENDER_ROOT);

    private Classes() {}
}
