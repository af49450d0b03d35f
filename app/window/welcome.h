#pragma once

#include "app/widgets/flow_scroll.h"

class QVBoxLayout;

namespace rig {

// What is seen before a file is open.
class Welcome : public FlowScroll
{
    Q_OBJECT

public:
    explicit Welcome(QWidget* parent = nullptr);

signals:
    void newAsked();
    void openAsked();
    void demoAsked();

private:
    void fill(QVBoxLayout* layout);
};

} // namespace rig
