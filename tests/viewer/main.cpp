// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>
#include <iostream>

#include "offscreen/own_screen.h"
#include "offscreen/runtime_folder.h"
#include "window/look.h"

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    if (testing::GTEST_FLAG(list_tests)) return RUN_ALL_TESTS();
    try {
        const seamward::viewer::OwnScreen screen(2000, 1200);
        qputenv("QT_QPA_PLATFORM", "xcb");
        qunsetenv("WAYLAND_DISPLAY");
        const seamward::viewer::RuntimeFolder runtime_folder;
        // What the user keeps is not touched: settings, drafts, pictures of examples. Those and the compiled shaders are made
        // once for all tests.
        const QTemporaryDir own;
        for (const char* name : {"XDG_CONFIG_HOME", "XDG_DATA_HOME"}) qputenv(name, QFile::encodeName(own.filePath(name)));
        qputenv("XDG_CACHE_HOME", QFile::encodeName(QFileInfo(QFile::decodeName(argv[0])).absoluteDir().filePath("cache")));
        seamward::viewer::prepare_graphics();
        QApplication application(argc, argv);
        QApplication::setQuitOnLastWindowClosed(false);
        seamward::viewer::dress(application);
        return RUN_ALL_TESTS();
    } catch (const std::exception& fault) {
        std::cerr << fault.what() << '\n';
        return 1;
    }
}
