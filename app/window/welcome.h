#pragma once

#include "app/widgets/flow_scroll.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace rig {

// What is seen before a file is open. The one that was opened last is offered first, while it is there.
class Welcome : public FlowScroll
{
    Q_OBJECT

public:
    explicit Welcome(QWidget* parent = nullptr);

signals:
    void fileAsked(const QString& path);
    void newAsked();
    void openAsked();
    void demoAsked();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void fill(QVBoxLayout* layout);
    void offerLast();

    QString m_lastPath;
    QPushButton* m_last = nullptr;
    QLabel* m_folder = nullptr; // that it lies in
    QPushButton* m_new = nullptr;
};

} // namespace rig
