# SPDX-License-Identifier: GPL-3.0-or-later
# What the viewer needs; its tests need it too. Debian: libvtk9-dev libvtk9-qt-dev qtbase5-dev libcli11-dev libx11-dev
# (which libvtk9-dev brings).

find_package(VTK 9.1 REQUIRED COMPONENTS CommonComputationalGeometry CommonCore
  CommonDataModel CommonExecutionModel CommonMath CommonTransforms
  FiltersCore FiltersGeneral FiltersSources GUISupportQt IOOggTheora RenderingCore RenderingOpenGL2)
find_package(Qt5 5.15 REQUIRED COMPONENTS Core Gui Widgets)
find_package(CLI11 REQUIRED)
find_package(X11 REQUIRED)
