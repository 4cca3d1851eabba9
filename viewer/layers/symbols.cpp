// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/symbols.h"

#include <vtkAppendPolyData.h>
#include <vtkCapsuleSource.h>
#include <vtkCubeSource.h>
#include <vtkNew.h>
#include <vtkParametricFunctionSource.h>
#include <vtkParametricTorus.h>
#include <vtkSphereSource.h>
#include <vtkTransform.h>
#include <vtkTransformPolyDataFilter.h>

namespace seamward::viewer {

namespace {

vtkSmartPointer<vtkPolyData> turned(vtkPolyData* solid, double degrees) {
    vtkNew<vtkTransform> transform;
    transform->RotateZ(degrees);
    vtkNew<vtkTransformPolyDataFilter> filter;
    filter->SetTransform(transform);
    filter->SetInputData(solid);
    filter->Update();
    return filter->GetOutput();
}

vtkSmartPointer<vtkPolyData> bar(double x, double y, double wide, double high) {
    vtkNew<vtkCubeSource> cube;
    cube->SetCenter(x, y, 0);
    cube->SetXLength(wide);
    cube->SetYLength(high);
    cube->SetZLength(0.15);
    cube->Update();
    return cube->GetOutput();
}

vtkSmartPointer<vtkPolyData> capsule() {
    vtkNew<vtkCapsuleSource> source;
    source->SetRadius(0.21);
    source->SetCylinderLength(0.95);
    source->SetThetaResolution(16);
    source->SetPhiResolution(12);
    source->Update();
    return turned(source->GetOutput(), 90);
}

vtkSmartPointer<vtkPolyData> ball() {
    vtkNew<vtkSphereSource> source;
    source->SetRadius(0.42);
    source->SetThetaResolution(24);
    source->SetPhiResolution(16);
    source->Update();
    return source->GetOutput();
}

vtkSmartPointer<vtkPolyData> torus() {
    vtkNew<vtkParametricTorus> torus;
    torus->SetRingRadius(0.40);
    torus->SetCrossSectionRadius(0.14);
    vtkNew<vtkParametricFunctionSource> source;
    source->SetParametricFunction(torus);
    source->SetUResolution(28);
    source->SetVResolution(12);
    source->SetWResolution(1);
    source->Update();
    return source->GetOutput();
}

vtkSmartPointer<vtkPolyData> lattice() {
    vtkNew<vtkAppendPolyData> all;
    for (const double at : {-0.36, 0.0, 0.36}) {
        all->AddInputData(bar(at, 0, 0.13, 0.95));
        all->AddInputData(bar(0, at, 0.95, 0.13));
    }
    all->Update();
    return all->GetOutput();
}

vtkSmartPointer<vtkPolyData> cross() {
    vtkNew<vtkAppendPolyData> all;
    all->AddInputData(turned(bar(0, 0, 1.0, 0.17), 45));
    all->AddInputData(turned(bar(0, 0, 1.0, 0.17), -45));
    all->Update();
    return all->GetOutput();
}

}  // namespace

vtkSmartPointer<vtkPolyData> symbol_solid(Symbol symbol) {
    switch (symbol) {
        case Symbol::slot: return capsule();
        case Symbol::hole: return ball();
        case Symbol::ring: return torus();
        case Symbol::mesh: return lattice();
        case Symbol::shut: break;
    }
    return cross();
}

}  // namespace seamward::viewer
